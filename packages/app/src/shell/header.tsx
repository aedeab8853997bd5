import { useEffect } from "react";
import { desk, useDesk } from "../desk/desk.ts";
import { TextLine } from "../fields/text-field.tsx";
import { BaySwitch } from "./bay-switch.tsx";
import { CommandsButton } from "./commands-button.tsx";
import { History } from "./history.tsx";
import { JobActions } from "./job-actions.tsx";
import { JobSheetButton } from "./job-sheet-button.tsx";
import { Mark } from "./mark.tsx";
import { useCompact, useNarrow } from "./media.ts";
import { SavedState } from "./saved-state.tsx";
import { Stages } from "./stages.tsx";
import { ThemeButton } from "./theme-button.tsx";
import { UnitChoice } from "./unit-choice.tsx";

/** Whose bay this is, and everything that is about the job as a whole. */
export function Header() {
	const compact = useCompact();
	const narrow = useNarrow();
	const title = useDesk((state) => state.shown.title);
	const { change } = desk.getState();
	useEffect(() => {
		document.title = title === "" ? "Baywright" : `${title} – Baywright`;
	}, [title]);
	return (
		<header className={compact ? "header header-compact" : "header"}>
			<Mark />
			<div className="header-job">
				<h1 className="hidden">Baywright: {title}</h1>
				<div className="header-title">
					<TextLine
						label="Title of the job"
						value={title}
						instead="Untitled job"
						commit={(text) => change("title", [{ op: "replace", path: "/title", value: text }])}
					/>
				</div>
				<div className="header-under">
					<BaySwitch />
					{compact ? <SavedState /> : null}
				</div>
			</div>
			{narrow ? null : <Stages />}
			{compact ? null : <SavedState />}
			<History />
			{compact ? (
				<JobSheetButton />
			) : (
				<>
					<UnitChoice />
					<JobActions />
					<CommandsButton />
					<ThemeButton />
				</>
			)}
		</header>
	);
}
