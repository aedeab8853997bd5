import { isSelected } from "@baywright/editor";
import { describe, type Finding, type Remedy, type Severity } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay, usePlanPart } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { SeverityMark } from "./severity-mark.tsx";

/** Everything the plan must tell, gravest first, each with its cures. */
export function FindingsPanel() {
	const findings = usePlanPart((plan) => plan.findings);
	const unit = useDesk((state) => state.shown.display.length);
	const walls = useBay((bay) => bay.corners.length - 1);
	// That a bay just begun has no walls yet is plain to see, and nothing to be warned of.
	const begun = walls > 0;
	const panel = useRef<HTMLElement>(null);
	const cured = useRef<readonly Finding[] | null>(null);
	// The cure that was pressed is gone with its finding: what is left to look out for comes next.
	useEffect(() => {
		const isCured = cured.current !== null && cured.current !== findings;
		if (isCured && document.activeElement === document.body) panel.current?.focus();
		cured.current = null;
	}, [findings]);
	const cure = (label: string, remedy: Remedy) => {
		cured.current = findings;
		desk.getState().change(label, remedy.change);
	};
	const told = (begun ? findings : []).map((finding, index) => ({
		finding,
		index,
		words: describe(finding, { unit, walls }),
	}));

	return (
		<section ref={panel} className="findings" id="findings" aria-label="Findings" tabIndex={-1}>
			<div className="findings-head">
				<h2 className="findings-heading">
					{told.length === 0
						? begun
							? "Nothing to look out for"
							: "Nothing to look out for yet"
						: tally(told.map(({ words }) => words.severity))}
				</h2>
				<Button className="findings-help" onPress={() => screen.getState().show({ kind: "findings-help" })}>
					What may be told
				</Button>
			</div>
			<ul className="finding-list">
				{told.map(({ finding, index, words }) => (
					<FindingCard key={`${finding.code} ${index}`} finding={finding} index={index} words={words} cure={cure} />
				))}
			</ul>
		</section>
	);
}

interface CardProps {
	readonly finding: Finding;
	readonly index: number;
	readonly words: ReturnType<typeof describe>;
	readonly cure: (label: string, remedy: Remedy) => void;
}

function FindingCard({ finding, index, words, cure }: CardProps) {
	const chosen = useDesk((state) => isSelected(state.selection, "finding", index));
	const { select, point } = desk.getState();
	return (
		<li
			className={`finding finding-${words.severity}${chosen ? " chosen" : ""}`}
			onPointerEnter={() => point({ kind: "finding", index })}
			onPointerLeave={() => point(null)}
		>
			<SeverityMark severity={words.severity} />
			<div className="finding-words">
				<Button
					className="finding-title"
					aria-pressed={chosen}
					onPress={() => select(chosen ? null : { kind: "finding", index })}
				>
					<span className="finding-severity">{WORDS[words.severity]}</span> {words.title}
				</Button>
				<p>{words.message}</p>
				{finding.remedies.length === 0 ? null : (
					<div className="remedies">
						{finding.remedies.map((remedy, choice) => (
							<Button
								// biome-ignore lint/suspicious/noArrayIndexKey: a remedy is known by its place
								key={choice}
								className="button"
								onPress={() => cure(words.remedies[choice] ?? words.title, remedy)}
							>
								{words.remedies[choice]}
							</Button>
						))}
					</div>
				)}
			</div>
		</li>
	);
}

const ORDER: readonly Severity[] = ["refusal", "warning", "note"];
const WORDS = { refusal: "Refused", warning: "Warning", note: "Note" } as const;
const COUNTED = {
	refusal: ["refusal", "refusals"],
	warning: ["warning", "warnings"],
	note: ["note", "notes"],
} as const;

/** "1 refusal, 2 warnings". */
function tally(severities: readonly Severity[]): string {
	return ORDER.map((severity) => [severity, severities.filter((each) => each === severity).length] as const)
		.filter(([, count]) => count > 0)
		.map(([severity, count]) => `${count} ${COUNTED[severity][count === 1 ? 0 : 1]}`)
		.join(", ");
}
