import "@fontsource/atkinson-hyperlegible-next/latin-400.css";
import "@fontsource/atkinson-hyperlegible-next/latin-600.css";
import "./tokens.css";
import "./styles/base.css";
import "./styles/controls.css";
import "./styles/shell.css";
import "./styles/panels.css";
import "./styles/curtains.css";
import "./styles/sheets.css";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { screen, setTheme } from "./desk/screen.ts";
import { keepJob } from "./storage/keeper.ts";

setTheme(screen.getState().theme);
await keepJob();
createRoot(document.getElementById("root") as HTMLElement).render(<App />);
