import { newJob, type PlainBayId, plainBay, plainBays, plansOf } from "@baywright/editor";
import type { Bay, BayPlan } from "@baywright/setout";
import { Button } from "react-aria-components";
import { Thumbnail } from "./thumbnail.tsx";

interface Props {
	/** A plain bay was taken. */
	readonly take: (bay: Bay, title: string) => void;
	/** The bay is to be taped from nothing. */
	readonly tape: () => void;
}

/** The ways to begin a bay: taped wall by wall, or from a drawn one that is dragged and typed on. */
export function PlainCards({ take, tape }: Props) {
	return (
		<ul className="plain-list">
			<li>
				<Button className="plain-card plain-tape" onPress={tape}>
					<TapeSketch />
					<Words title="Tape it" note="Wall by wall, as measured: a run, an angle, a run." />
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
