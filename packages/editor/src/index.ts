export { type Clip, clipOf, clipText, type Pasted, paste, type ReadClip, readClip } from "./clip.ts";
export { createDesk, type Desk, type Step } from "./desk.ts";
export { appendWall } from "./edits/append-wall.ts";
export { addBay, canRemoveBay, duplicateBay, removeBay, renameBay, type WithBay } from "./edits/bays.ts";
export type { ChainEnd } from "./edits/chain.ts";
export { wallLength } from "./edits/faces.ts";
export { type BracketMeasured, setCut, setFittedBracket, setSpan, spanAcross } from "./edits/fitted.ts";
export { insertCorner, LEAST_WALL } from "./edits/insert-corner.ts";
export { levelWall } from "./edits/level.ts";
export { onBay } from "./edits/on-bay.ts";
export {
	addJoint,
	jointPlaces,
	moveJoint,
	pinOf,
	releasePin,
	removeJoint,
	setEnd,
	setJoints,
	setPin,
	setRadius,
} from "./edits/on-track.ts";
export {
	addNoDrill,
	addObstacle,
	addOpening,
	NARROWEST,
	removeNoDrill,
	removeObstacle,
	removeOpening,
	type Stretch,
	setNoDrill,
	setObstacle,
	setOpening,
	slide,
	stretchOf,
	USUAL_OBSTACLE,
	USUAL_WINDOW,
} from "./edits/on-walls.ts";
export { loosened, takenAgain, withoutReading, withReading } from "./edits/readings.ts";
export { type Removal, removeThing } from "./edits/remove.ts";
export { canRemoveCorner, removeCorner } from "./edits/remove-corner.ts";
export { retaped, type Typed } from "./edits/retape.ts";
export { deepestBow, setRise, straightened, typedRise } from "./edits/rise.ts";
export { angleOf, runOf, withAngle, withRun } from "./edits/runs.ts";
export { mirror, otherSide } from "./edits/turn-over.ts";
export { anchorOf } from "./grips/anchor.ts";
export { isPulled } from "./grips/bend.ts";
export type { Held } from "./grips/grip.ts";
export { type GripKind, gripOf, isGrip, nudged } from "./grips/grips.ts";
export { wayOut } from "./grips/wall.ts";
export {
	emptyBay,
	newJob,
	type PlainBay,
	type PlainBayId,
	plainBay,
	plainBays,
	plainJob,
} from "./plain-bays.ts";
export { plansOf } from "./plans.ts";
export { isSelected, type Selection, sameThing, type Target, type ThingKind } from "./selection.ts";
export { share } from "./share.ts";
export { type SnapAlong, type Stop, snapAlong, stopsOn } from "./snap/along.ts";
export type { Locus } from "./snap/locus.ts";
export { SNAP_REACH } from "./snap/snap.ts";
export { createToolbox, type Toolbox } from "./toolbox.ts";
export { KIND_NAMES } from "./tools/obstacle.ts";
export type { Entry, EntryField, Figure, Sketch, SketchLine, ToolEvent, ToolName, Touch } from "./tools/tool.ts";
export * from "./viewport.ts";
export { nextStop, stopsOf } from "./walk.ts";
