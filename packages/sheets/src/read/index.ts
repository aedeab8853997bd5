export { bayOf } from "./bay-of.ts";
export type { Drawing, ReadDrawing } from "./drawing.ts";
export { readDrawing } from "./read-drawing.ts";
export { chordOf, headingsOf, middleOf, type Piece, radiusOf, roomAngle, sagittaOf } from "./stroke.ts";
export type { UnitName } from "./unit.ts";
export {
	GREATEST_REACH,
	type ImportWish,
	importWalls,
	isTaken,
	LEAST_REACH,
	layerWords,
	USUAL_REACH,
	type WallImport,
} from "./wall-import.ts";
