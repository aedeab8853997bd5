import { Button, Label, ProgressBar } from "react-aria-components";
import { lower } from "../fields/lower.ts";
import { make, useMaker } from "./maker.ts";
import { cancelSaving, useSaving } from "./saving.ts";

/** How far the shown sheets have come, while they are made anew. */
export function Far() {
	const far = useMaker((state) => state.far);
	if (far === null) return null;
	return <span className="quiet pages-far">Drawing: {lower(far.doing)} …</span>;
}

/** Why the shown sheets could not be made. */
export function Trouble() {
	const trouble = useMaker((state) => state.trouble);
	if (trouble === "") return null;
	return (
		<div className="sheets-trouble" role="alert">
			<p>{trouble}</p>
			<Button className="button" onPress={make}>
				Try again
			</Button>
		</div>
	);
}

/** A file in the making, and what came in its way. */
export function SavingProgress() {
	const { far, trouble, ready } = useSaving((state) => state);
	return (
		<>
			{far === null ? null : (
				<div className="sheets-saving">
					<ProgressBar value={far.done} maxValue={far.of}>
						<Label>Making the file: {lower(far.doing)}</Label>
						<progress value={far.done} max={far.of} aria-hidden="true" />
					</ProgressBar>
					<Button className="button" onPress={cancelSaving}>
						Cancel
					</Button>
				</div>
			)}
			{trouble === "" ? null : (
				<p className="sheets-trouble" role="alert">
					{trouble}
				</p>
			)}
			{ready === null ? null : (
				<p className="sheets-ready">
					The browser did not let a tab open by itself.{" "}
					<a className="button" href={ready} target="_blank" rel="noreferrer">
						Open the PDF
					</a>
				</p>
			)}
		</>
	);
}
