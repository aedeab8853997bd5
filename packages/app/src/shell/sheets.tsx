import { lazy, Suspense } from "react";
import { screen, useScreen } from "../desk/screen.ts";

const Sheet = lazy(async () => ({ default: (await import("./sheet.tsx")).Sheet }));
const SystemsSheet = lazy(async () => ({ default: (await import("../panels/systems-sheet.tsx")).SystemsSheet }));
const ClothsSheet = lazy(async () => ({ default: (await import("../panels/cloths-sheet.tsx")).ClothsSheet }));
const JobSheet = lazy(async () => ({ default: (await import("./job-sheet.tsx")).JobSheet }));
const FindingsHelp = lazy(async () => ({ default: (await import("../panels/findings-help.tsx")).FindingsHelp }));
const BaysSheet = lazy(async () => ({ default: (await import("./bays-sheet.tsx")).BaysSheet }));
const NewBay = lazy(async () => ({ default: (await import("../examples/new-bay.tsx")).NewBay }));
const CommandList = lazy(async () => ({ default: (await import("../commands/command-list.tsx")).CommandList }));
const KeysSheet = lazy(async () => ({ default: (await import("../commands/keys-sheet.tsx")).KeysSheet }));
const Opening = lazy(async () => ({ default: (await import("../examples/opening.tsx")).Opening }));
const CornerCard = lazy(async () => ({ default: (await import("../panels/corner-card/corner-card.tsx")).CornerCard }));
const SimulateSheet = lazy(async () => ({ default: (await import("../simulate/simulate-sheet.tsx")).SimulateSheet }));
const StepByStep = lazy(async () => ({ default: (await import("../taping/step-by-step.tsx")).StepByStep }));
const FromDrawing = lazy(async () => ({ default: (await import("../from-drawing/from-drawing.tsx")).FromDrawing }));

/** What stands open over the desk, one at a time. */
export function Sheets() {
	const sheet = useScreen((state) => state.sheet);
	if (sheet === null) return null;
	return (
		<Suspense fallback={null}>
			<Sheet title={titleOf(sheet)} wide={WIDE.includes(sheet.kind)} onClose={() => screen.getState().close()}>
				<Suspense fallback={<p className="quiet">One moment…</p>}>
					{sheet.kind === "examples" ? <Opening /> : null}
					{sheet.kind === "bays" ? <BaysSheet /> : null}
					{sheet.kind === "new-bay" ? <NewBay /> : null}
					{sheet.kind === "commands" ? <CommandList /> : null}
					{sheet.kind === "keys" ? <KeysSheet /> : null}
					{sheet.kind === "corner-card" ? <CornerCard corner={sheet.corner} /> : null}
					{sheet.kind === "from-drawing" ? <FromDrawing file={sheet.file} bytes={sheet.bytes} /> : null}
					{sheet.kind === "systems" ? <SystemsSheet /> : null}
					{sheet.kind === "cloths" ? <ClothsSheet curtain={sheet.curtain} /> : null}
					{sheet.kind === "job" ? <JobSheet /> : null}
					{sheet.kind === "findings-help" ? <FindingsHelp /> : null}
					{sheet.kind === "simulate" ? <SimulateSheet /> : null}
					{sheet.kind === "taping" ? <StepByStep undo /> : null}
					{sheet.kind === "problems" ? <Problems lines={sheet.lines} /> : null}
				</Suspense>
			</Sheet>
		</Suspense>
	);
}

type Open = NonNullable<ReturnType<typeof screen.getState>["sheet"]>;

const WIDE: readonly Open["kind"][] = [
	"examples",
	"bays",
	"new-bay",
	"keys",
	"corner-card",
	"from-drawing",
	"systems",
	"cloths",
	"findings-help",
	"simulate",
	"taping",
];

function titleOf(sheet: Open): string {
	return sheet.kind === "problems" ? `${sheet.file} could not be read` : TITLES[sheet.kind];
}

const TITLES: Readonly<Record<Exclude<Open["kind"], "problems">, string>> = {
	examples: "Examples",
	bays: "Bays of this job",
	"new-bay": "A new bay",
	commands: "Commands",
	keys: "Keys",
	"corner-card": "Corner card",
	"from-drawing": "Walls from a drawing",
	systems: "Track systems",
	cloths: "Cloths",
	job: "Job",
	"findings-help": "What the plan may tell",
	simulate: "How often would it fit?",
	taping: "Tape step by step",
};

function Problems({ lines }: { readonly lines: readonly string[] }) {
	return (
		<>
			<p>Nothing on the desk was changed. The file has {lines.length === 1 ? "this problem" : "these problems"}:</p>
			<ul className="problem-lines">
				{lines.slice(0, MOST_LINES).map((line) => (
					<li key={line}>{line}</li>
				))}
			</ul>
			{lines.length > MOST_LINES ? <p className="quiet">And {lines.length - MOST_LINES} more.</p> : null}
		</>
	);
}

/** More lines than anyone reads before mending the first. */
const MOST_LINES = 40;
