import { capital, problemLine } from "@baywright/setout";
import { type Drawing, type ImportWish, importWalls, type WallImport } from "@baywright/sheets/read";
import { useMemo, useState } from "react";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { useScreen } from "../desk/screen.ts";
import { pickDrawing } from "../storage/job-file.ts";
import { ChainFields } from "./chain-fields.tsx";
import { ChainPreview } from "./chain-preview.tsx";
import "./from-drawing.css";
import { addAsBay, startWith } from "./take.ts";
import { useDrawing } from "./use-drawing.ts";
import { WallTable } from "./wall-table.tsx";

interface Props {
	readonly file: string;
	readonly bytes: Uint8Array;
}

/** The walls of a drawing: which layer, unit and chain, how they look, what is left out, and a button that makes a bay of them. */
export function FromDrawing({ file, bytes }: Props) {
	const read = useDrawing(bytes);
	if (read === null)
		return (
			<p className="quiet" role="status">
				Reading {file}…
			</p>
		);
	if (!read.ok)
		return (
			<Refused file={file} lines={[problemLine(read.problem)]}>
				<AnotherFile />
			</Refused>
		);
	// A drawing of its own begins with nothing chosen.
	return <Chosen key={file + bytes.length} file={file} drawing={read.drawing} />;
}

function Chosen({ file, drawing }: { readonly file: string; readonly drawing: Drawing }) {
	const [wish, setWish] = useState<ImportWish>({});
	const imported = useMemo(() => importWalls(drawing, wish), [drawing, wish]);
	const choose = (part: ImportWish) => setWish((before) => ({ ...before, ...part }));
	const walls = imported.ok ? imported.walls : null;
	return (
		<div className="from-drawing">
			<div className="from-drawing-shown">
				{walls === null ? null : <ChainPreview walls={walls} />}
				{imported.ok ? null : <Refused file={file} lines={[problemLine(imported.problem)]} />}
				{walls === null || walls.problems.length === 0 ? null : (
					<Refused file={file} lines={walls.problems.map(problemLine)} />
				)}
				{walls === null ? null : <Notes notes={walls.notes} />}
			</div>
			<div className="from-drawing-chosen">
				<p className="from-drawing-file">{file}</p>
				<ChainFields drawing={drawing} wish={wish} walls={walls} choose={choose} />
				<Take file={file} walls={walls !== null && walls.problems.length === 0 ? walls : null} />
			</div>
			{walls === null ? null : <WallTable walls={walls} />}
		</div>
	);
}

/** Into the job on the desk, where there is one, or a job of its own. */
function Take({ file, walls }: { readonly file: string; readonly walls: WallImport | null }) {
	const started = useScreen((state) => state.started);
	const job = useDesk((state) => state.job.title);
	return (
		<div className="from-drawing-take">
			{started ? (
				<Button
					className="button button-main"
					isDisabled={walls === null}
					onPress={() => walls !== null && addAsBay(walls, file)}
				>
					Add to {job === "" ? "this job" : job}
				</Button>
			) : null}
			<Button
				className={started ? "button" : "button button-main"}
				isDisabled={walls === null}
				onPress={() => walls !== null && startWith(walls, file)}
			>
				Start a job with these walls
			</Button>
			<AnotherFile />
		</div>
	);
}

const AnotherFile = () => (
	<Button className="button" onPress={() => void pickDrawing()}>
		Another drawing
	</Button>
);

interface RefusedProps {
	readonly file: string;
	readonly lines: readonly string[];
	readonly children?: React.ReactNode;
}

/** Lines of one kind say no more than the first few of them. */
const MOST_LINES = 6;

function Refused({ file, lines, children }: RefusedProps) {
	return (
		<div className="from-drawing-refused" role="alert">
			<p>
				<strong>No bay can be made of {children === undefined ? "these walls" : file} yet.</strong> Nothing on the desk
				was changed.
			</p>
			<ul>
				{lines.slice(0, MOST_LINES).map((line) => (
					<li key={line}>{capital(line)}.</li>
				))}
			</ul>
			{lines.length > MOST_LINES ? <p className="quiet">And {lines.length - MOST_LINES} more.</p> : null}
			{children}
		</div>
	);
}

function Notes({ notes }: { readonly notes: readonly string[] }) {
	if (notes.length === 0) return null;
	return (
		<section className="from-drawing-notes" aria-label="What to know">
			<h3>What to know</h3>
			<ul>
				{notes.map((note) => (
					<li key={note}>{note}</li>
				))}
			</ul>
		</section>
	);
}
