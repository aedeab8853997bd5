import {
	capital,
	fixingGuidance,
	GUIDANCE_GROUND,
	guidanceSentence,
	rangesOf,
	surfacesOf,
	ZONE_ADVICE,
	ZONE_SOURCE,
	zoneName,
} from "@baywright/setout";
import { usePlanPart } from "../desk/on-table.ts";
import { Section } from "./section.tsx";
import "../styles/cautions.css";

/** What the brackets are fixed to and how, and where their holes may meet a concealed cable. */
export function FixingsPanel() {
	const fixings = usePlanPart((plan) => plan.fixings);
	const overhead = fixings[0]?.overhead === true;
	if (fixings.length === 0) return null;
	return (
		<Section title="Fixings" gist={<Surfaces />} open={false}>
			{overhead ? (
				<p>Over a ceiling cables and pipes lie anywhere: look before every hole.</p>
			) : (
				<>
					<Zones />
					<p>{ZONE_ADVICE}</p>
					<p className="quiet">{ZONE_SOURCE}</p>
				</>
			)}
			<dl>
				{surfacesOf(fixings).map((into) => (
					<div key={into}>
						<dt className="guided">{capital(fixingGuidance(into).surface)}</dt>
						<dd>{guidanceSentence(into)}</dd>
					</div>
				))}
			</dl>
			<p className="quiet">{GUIDANCE_GROUND}</p>
		</Section>
	);
}

function Surfaces() {
	return usePlanPart(({ fixings }) =>
		surfacesOf(fixings)
			.map((into) => fixingGuidance(into).surface)
			.join(", "),
	);
}

/** Brackets whose holes lie in the same zones, together. */
function Zones() {
	const groups = usePlanPart(({ fixings, projections }) => {
		const alike = new Map<string, number[]>();
		fixings.forEach(({ zones }, i) => {
			const names = zones.map((zone) => zoneName(zone, projections.length)).join(", ");
			const same = alike.get(names);
			if (same === undefined) alike.set(names, [i]);
			else same.push(i);
		});
		return [...alike].map(([names, brackets]) => ({ names, brackets: rangesOf(brackets) }));
	});
	return (
		<table className="figures zones">
			<thead>
				<tr>
					<th className="word">brackets</th>
					<th className="word">cables may run there: GB figures</th>
				</tr>
			</thead>
			<tbody>
				{groups.map(({ names, brackets }) => (
					<tr key={names}>
						<th scope="row" className="word">
							{brackets}
						</th>
						<td className="word">{names === "" ? "none expected" : names}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}
