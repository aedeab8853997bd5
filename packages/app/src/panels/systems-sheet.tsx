import { type BayPlan, libraryOf, planBay, severityOf, type TrackSystem } from "@baywright/setout";
import { useMemo } from "react";
import { Button } from "react-aria-components";
import { setTrack } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { bayOnTable, useLength } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { Item } from "./item.tsx";
import { SeverityMark } from "./severity-mark.tsx";

/** The job's own systems and the built-in ones side by side, each tried on the bay on the table. */
export function SystemsSheet() {
	const job = useDesk((state) => state.job);
	const bay = useDesk(bayOnTable);
	const tried = useMemo(() => {
		const library = libraryOf(job);
		return library.systems.map((system) => ({
			system,
			plan: planBay({ ...bay, track: { ...bay.track, system: system.id } }, library),
		}));
	}, [job, bay]);
	return (
		<>
			<p className="quiet">
				Invented systems, named by what they are. The figures in the leaflet of your own track decide; they can be
				written into the job file.
			</p>
			<ul className="systems">
				{tried.map(({ system, plan }) => (
					<SystemCard key={system.id} system={system} plan={plan} chosen={system.id === bay.track.system} />
				))}
			</ul>
		</>
	);
}

interface Props {
	readonly system: TrackSystem;
	readonly plan: BayPlan;
	readonly chosen: boolean;
}

function SystemCard({ system, plan, chosen }: Props) {
	const show = useLength();
	const { projection, bracket, stock } = system;
	return (
		<li className={chosen ? "system chosen" : "system"}>
			<div>
				<h3>{system.name}</h3>
				<Verdict plan={plan} />
			</div>
			<dl>
				<Item term="least radius" text={show(system.minRadius.internal)} />
				<Item term="projection" text={`${show(projection.min)}–${show(projection.max)}`} />
				<Item term="brackets at most" text={show(bracket.maxSpacing)} />
				<Item term="longest stock" text={show(Math.max(...stock.map(({ length }) => length)))} />
			</dl>
			<Button className="button" isDisabled={chosen} aria-label={`Use ${system.name}`} onPress={() => use(system)}>
				{chosen ? "In use" : "Use"}
			</Button>
		</li>
	);
}

function use(system: TrackSystem): void {
	const { bay, change } = desk.getState();
	change(`use ${system.name}`, setTrack(bay, "system", system.id));
	screen.getState().close();
}

/** How the bay on the table would come out with this system. */
function Verdict({ plan }: { readonly plan: BayPlan }) {
	const refused = plan.findings.some((finding) => severityOf(finding.code) === "refusal");
	const cautions = plan.findings.filter((finding) => severityOf(finding.code) === "warning").length;
	if (refused)
		return (
			<p className="verdict severity-refusal">
				<SeverityMark severity="refusal" /> Does not fit this bay
			</p>
		);
	if (cautions > 0)
		return (
			<p className="verdict severity-warning">
				<SeverityMark severity="warning" /> Fits, with {cautions === 1 ? "a warning" : `${cautions} warnings`}
			</p>
		);
	return <p className="verdict">Fits this bay</p>;
}
