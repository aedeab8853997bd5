import { newJob, type PlainBayId, plainBay, plainBays, plansOf } from "@baywright/editor";
import type { Bay, BayPlan } from "@baywright/setout";
import { Button } from "react-aria-components";
import { pickDrawing } from "../storage/job-file.ts";
import { Thumbnail } from "./thumbnail.tsx";

interface Props {
	/** A plain bay was taken. */
	readonly take: (bay: Bay, title: string) => void;
	/** The bay is to be taped from nothing. */
	readonly tape: () => void;
}

/** The ways to begin a bay: taped wall by wall, taken from a drawing file, or from a drawn one that is dragged and typed on. */
export function PlainCards({ take, tape }: Props) {
	return (
		<ul className="plain-list">
			<li>
				<Button className="plain-card plain-tape" onPress={tape}>
					<TapeSketch />
					<Words title="Tape it" note="Wall by wall, as measured: a run, an angle, a run." />
				</Button>
			</li>
			<li>
				<Button className="plain-card" onPress={() => void pickDrawing()}>
					<DrawingSketch />
					<Words title="From a drawing" note="Walls taken from a DXF or SVG file." />
				</Button>
			</li>
			{plainBays.map(({ id, title, note }) => (
				<li key={id}>
					<Button className="plain-card" onPress={() => take(plainBay(id), title)}>
						<Thumbnail plan={planOf(id)} />
						<Words title={title} note={note} />
					</Button>
				</li>
			))}
		</ul>
	);
}

const plans = new Map<PlainBayId, BayPlan>();

function planOf(id: PlainBayId): BayPlan {
	const known = plans.get(id) ?? (plansOf(newJob(plainBay(id)))[0] as BayPlan);
	plans.set(id, known);
	return known;
}

function Words({ title, note }: { readonly title: string; readonly note: string }) {
	return (
		<span className="opening-words">
			<span className="opening-title">{title}</span>
			<span className="opening-note">{note}</span>
		</span>
	);
}

/** A drawing on its paper, the bay in it picked out. */
function DrawingSketch() {
	return (
		<svg className="thumbnail" viewBox="0 0 240 132" aria-hidden="true">
			<path d="M66 14H158L178 34V118H66Z" fill="var(--sheet)" stroke="var(--edge)" strokeWidth="1.6" />
			<path d="M158 14V34H178" fill="none" stroke="var(--edge)" strokeWidth="1.6" />
			<path d="M80 104V74H164V104" fill="none" stroke="var(--soft)" strokeWidth="1.4" />
			<path d="M92 74V52L108 40H136L152 52V74" fill="none" stroke="var(--wall)" strokeWidth="3.2" />
			{[
				[92, 52],
				[108, 40],
				[136, 40],
				[152, 52],
			].map(([x, y]) => (
				<circle key={x} cx={x} cy={y} r="4" fill="var(--sheet)" stroke="var(--track)" strokeWidth="2" />
			))}
		</svg>
	);
}

/** Two walls measured, the third being drawn. */
function TapeSketch() {
	return (
		<svg className="thumbnail" viewBox="0 0 240 132" aria-hidden="true">
			<path d="M58 112V46H150" fill="none" stroke="var(--wall)" strokeWidth="3.2" />
			<path d="M150 46 192 88" fill="none" stroke="var(--track)" strokeWidth="2.2" strokeDasharray="7 5" />
			<path d="M58 26H150M58 20v12M150 20v12M40 112V46M34 112h12M34 46h12" stroke="var(--soft)" strokeWidth="1.4" />
			<circle cx="150" cy="46" r="6" fill="var(--sheet)" stroke="var(--wall)" strokeWidth="2.4" />
			<path d="M192 80v16M184 88h16" stroke="var(--ink)" strokeWidth="2" />
		</svg>
	);
}
