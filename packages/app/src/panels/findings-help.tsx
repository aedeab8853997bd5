import "../styles/findings-help.css";
import { midpoint, type Point, pointAt } from "@baywright/geometry";
import {
	type BayPlan,
	describe,
	type Finding,
	type FindingCode,
	findingSamples,
	libraryOf,
	parseJob,
	planBay,
	sampleJob,
	severities,
} from "@baywright/setout";
import { useMemo } from "react";
import { useDesk } from "../desk/desk.ts";
import { Thumbnail } from "../examples/thumbnail.tsx";
import { SeverityMark } from "./severity-mark.tsx";

const WORDS = { refusal: "Refusal", warning: "Warning", note: "Note" } as const;

/** Every finding there is, each brought about by a bay of its own: its drawing, its sentence and its cures are worked out, not written here. */
export function FindingsHelp() {
	const unit = useDesk((state) => state.shown.display.length);
	const told = useMemo(() => codes.map(brought).filter((sample) => sample !== null), []);
	return (
		<>
			<p className="quiet">
				What the plan may have to tell, each with a bay that brings it about. A refusal cannot be fitted, a warning can
				but wants a look, a note is for your information.
			</p>
			<ul className="help-findings">
				{told.map(({ code, plan, finding, drawn, at }) => {
					const { severity, title, message, remedies } = describe(finding, { unit, walls: plan.projections.length });
					return (
						<li key={code} className="help-finding">
							<Thumbnail plan={plan} drawn={drawn} mark={at === null ? null : { at, severity }} />
							<div>
								<h3 className="help-title">
									<SeverityMark severity={severity} />
									<span>
										<span className={`help-severity help-${severity}`}>{WORDS[severity]}:</span> {title}
									</span>
								</h3>
								<p>{message}</p>
								{remedies.length === 0 ? null : <p className="quiet">Cures: {[...new Set(remedies)].join(" · ")}</p>}
							</div>
						</li>
					);
				})}
			</ul>
		</>
	);
}

const codes = Object.keys(severities) as FindingCode[];

function brought(code: FindingCode) {
	const sample = findingSamples[code];
	const read = parseJob(sampleJob(sample));
	const bay = read.ok ? read.job.bays[0] : undefined;
	if (!read.ok || bay === undefined) return null;
	const plan = planBay(
		bay,
		libraryOf(read.job),
		sample.stockNodes === undefined ? {} : { stockNodes: sample.stockNodes },
	);
	const finding = plan.findings.find((one) => one.code === code);
	if (finding === undefined) return null;
	const drawn = bay.corners.map(([x, y]): Point => ({ x, y }));
	return { code, plan, finding, drawn, at: placeOf(finding, plan, drawn) };
}

/** Where the finding sits in its sample; null where it is about the bay as a whole. */
function placeOf({ where }: Finding, { path }: BayPlan, corners: readonly Point[]): Point | null {
	if (where.at !== undefined) return where.at;
	if (where.station !== undefined && path !== null) return pointAt(path, where.station)?.at ?? null;
	if (where.corner !== undefined) return corners[where.corner] ?? null;
	const [left, right] = where.wall === undefined ? [] : [corners[where.wall], corners[where.wall + 1]];
	return left === undefined || right === undefined ? null : midpoint(left, right);
}
