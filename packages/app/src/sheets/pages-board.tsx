import { type KeyboardEvent, useEffect, useRef } from "react";
import { desk } from "../desk/desk.ts";
import { Choice } from "../fields/choice.tsx";
import { pageKey, useMaker, watchSheets } from "./maker.ts";
import { SHEET_WORDS } from "./making.ts";
import { PageImage } from "./page-image.tsx";
import { PageRail } from "./page-rail.tsx";
import { Far, Trouble } from "./progress.tsx";
import { type PackPage, pagesOf, shown, useShown, type Zoom } from "./shown.ts";
import { useWishes } from "./wishes.ts";
import "./pages.css";

/** The true pages in place of the drawing: small ones at the side, the one at hand large. */
export function PagesBoard() {
	useEffect(watchSheets, []);
	useEffect(showPlanForFindings, []);
	const made = useMaker((state) => state.made);
	const without = useWishes((state) => state.without);
	const wanted = useShown((state) => state.page);
	const zoom = useShown((state) => state.zoom);
	const pages = pagesOf(made, without);
	const found = pages.findIndex(({ of, page }) => pageKey(of, page) === wanted);
	const at = Math.max(0, found);
	const current = pages[at];

	function onKeyDown(event: KeyboardEvent): void {
		if (event.target instanceof HTMLInputElement || event.altKey || event.ctrlKey || event.metaKey) return;
		const to = TURNS[event.key]?.(at, pages.length - 1);
		if (to === undefined || pages[to] === undefined) return;
		event.preventDefault();
		turnTo(pages[to]);
	}

	return (
		<section className="pages-board" aria-label="Pages" onKeyDown={onKeyDown}>
			<div className="pages-head">
				<p className="pages-title" role="status">
					{current === undefined ? null : (
						<>
							<strong>{SHEET_WORDS[current.of.name]}</strong> page {at + 1} of {pages.length}
						</>
					)}
				</p>
				<Far />
				<div className="pages-tools">
					<Turn label="Previous page" sign="‹" to={pages[at - 1]} />
					<Turn label="Next page" sign="›" to={pages[at + 1]} />
					<Choice
						label="Zoom"
						labelHidden
						value={zoom}
						options={ZOOMS}
						choose={(next) => shown.setState({ zoom: next })}
					/>
				</div>
			</div>
			<Trouble />
			{current === undefined ? (
				<p className="pages-none">{made === null ? "" : NothingChosen(made.sheets.length)}</p>
			) : (
				<>
					<PageRail pages={pages} current={at} />
					<LargePage page={current} zoom={zoom} />
				</>
			)}
		</section>
	);
}

const NothingChosen = (sheets: number): string =>
	sheets === 0 ? "No sheet can be made yet: the list says why." : "No sheet is ticked in the list.";

const ZOOMS: readonly (readonly [Zoom, string])[] = [
	["page", "Whole page"],
	["width", "Width"],
	["true-size", "100 %"],
];

const TURNS: Readonly<Record<string, (at: number, last: number) => number>> = {
	ArrowLeft: (at) => at - 1,
	ArrowRight: (at) => at + 1,
	PageUp: (at) => at - 1,
	PageDown: (at) => at + 1,
	Home: () => 0,
	End: (_, last) => last,
};

const turnTo = ({ of, page }: PackPage): void => shown.setState({ page: pageKey(of, page) });

function Turn({
	label,
	sign,
	to,
}: {
	readonly label: string;
	readonly sign: string;
	readonly to: PackPage | undefined;
}) {
	return (
		<button
			type="button"
			className="plan-button"
			aria-label={label}
			disabled={to === undefined}
			onClick={() => to && turnTo(to)}
		>
			{sign}
		</button>
	);
}

function LargePage({ page, zoom }: { readonly page: PackPage; readonly zoom: Zoom }) {
	const place = useRef<HTMLElement>(null);
	const key = pageKey(page.of, page.page);
	// biome-ignore lint/correctness/useExhaustiveDependencies: another page is read from its top
	useEffect(() => {
		place.current?.scrollTo(0, 0);
	}, [key]);
	const size = page.of.pages[page.page];
	if (size === undefined) return null;
	const { width, height, label } = size;
	const widths: Readonly<Record<Zoom, string>> = {
		page: `min(100cqw, 100cqh * ${width / height})`,
		width: "100cqw",
		"true-size": `${width}mm`,
	};
	return (
		// biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by key
		<section ref={place} className="page-large" aria-label="Page at hand" tabIndex={0}>
			<PageImage key={key} page={page} alt={`${page.of.title}, page ${label}`} width={widths[zoom]} />
		</section>
	);
}

/** A finding that is chosen points to its place, which is on the plan. */
function showPlanForFindings(): () => void {
	return desk.subscribe(({ selection }, before) => {
		if (selection !== before.selection && selection?.kind === "finding") shown.setState({ board: "plan" });
	});
}
