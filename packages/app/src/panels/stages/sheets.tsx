export { SheetsPanel as SheetsStage } from "../sheets-panel.tsx";
