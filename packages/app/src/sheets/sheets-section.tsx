import type { Format } from "@baywright/sheets";
import { useEffect } from "react";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { Choice } from "../fields/choice.tsx";
import { Pick } from "../fields/pick.tsx";
import { useNarrow } from "../shell/media.ts";
import { useMaker, watchSheets } from "./maker.ts";
import { SavingProgress, Trouble } from "./progress.tsx";
import { openSheets, saveSheets, useSaving } from "./saving.ts";
import { SheetList } from "./sheet-list.tsx";
import { pagesOf, shown, useShown } from "./shown.ts";
import { PAPERS, type Strips, setPrinter, useWishes, wishes } from "./wishes.ts";
import "./sheets.css";

/** Which sheets go into the pack, on what paper, and out. */
export function SheetsSection() {
	useEffect(watchSheets, []);
	const narrow = useNarrow();
	const bays = useDesk((state) => state.job.bays.length);
	const of = useWishes((state) => state.of);
	const paper = useWishes((state) => state.paper);
	const board = useShown((state) => state.board);
	return (
		<>
			{narrow ? null : (
				<Choice label="Shown" value={board} options={BOARDS} choose={(next) => shown.setState({ board: next })} />
			)}
			{bays === 1 ? null : (
				<Choice label="Sheets of" value={of} options={OF} choose={(next) => wishes.setState({ of: next })} />
			)}
			<Choice
				label="Paper"
				value={paper}
				options={PAPERS.map((name) => [name, name] as const)}
				choose={(next) => setPrinter({ paper: next })}
			/>
			<PackOut narrow={narrow} />
			{narrow ? <Trouble /> : null}
			<SheetList />
			<StripsPick />
			<MissingLetters />
			<OtherFormats />
		</>
	);
}

const BOARDS = [
	["pages", "Pages"],
	["plan", "Plan"],
] as const;

const OF = [
	["bay", "This bay"],
	["job", "All bays"],
] as const;

const STRIPS: readonly (readonly [Strips, string])[] = [
	["sheets", "on sheets of this paper"],
	["long", "each piece on one long page"],
	["roll", "true size, for a roll of paper"],
];

function StripsPick() {
	const strips = useWishes((state) => state.strips);
	const wanted = useWishes((state) => !state.without.includes("strips"));
	const has = useMaker(({ made }) => made?.sheets.some(({ name }) => name === "strips") ?? false);
	if (!wanted || !has) return null;
	return <Pick label="Strips" value={strips} options={STRIPS} choose={(next) => wishes.setState({ strips: next })} />;
}

/** Letters named before the rest are left out. */
const MOST_NAMED = 20;

function MissingLetters() {
	const letters = useMaker(({ made }) => made?.missingLetters.slice(0, MOST_NAMED).join(" ") ?? "");
	if (letters === "") return null;
	return <p className="quiet">Drawn as empty boxes, because the sheets have no such letters: {letters}</p>;
}

/** What is in the pack, and whether it can go out now. */
function usePack() {
	const made = useMaker((state) => state.made);
	const without = useWishes((state) => state.without);
	const busy = useSaving((state) => state.far !== null);
	const pages = pagesOf(made, without);
	const sheets = [...new Set(pages.map(({ of }) => of))];
	const names = [...new Set(sheets.map(({ name }) => name))];
	return { pages: pages.length, sheets, names, held: busy || pages.length === 0 };
}

function PackOut({ narrow }: { readonly narrow: boolean }) {
	const made = useMaker((state) => state.made !== null);
	const { pages, names, held } = usePack();
	const [first, second] = ["button button-main", "button"];
	const save = (
		<Button
			key="save"
			className={narrow ? second : first}
			isDisabled={held}
			onPress={() => void saveSheets(names, "pdf")}
		>
			Save PDF
		</Button>
	);
	const open = (
		<Button key="open" className={narrow ? first : second} isDisabled={held} onPress={() => void openSheets(names)}>
			{narrow ? "Open the PDF" : "Print"}
		</Button>
	);
	return (
		<>
			<p className="sheets-pack">{made ? PACKS[Math.min(pages, 2)]?.(pages) : "Drawing the sheets …"}</p>
			<div className="pair">{narrow ? [open, save] : [save, open]}</div>
			<SavingProgress />
			<p className="quiet">
				{narrow ? "The PDF opens" : "Print opens the PDF"} in a tab of its own: print it from there at 100 %, not fitted
				to the page.
			</p>
		</>
	);
}

const PACKS: readonly ((pages: number) => string)[] = [
	() => "Nothing is in the pack",
	() => "1 page in the pack",
	(pages) => `${pages} pages in one pack`,
];

function OtherFormats() {
	const { sheets, names, held } = usePack();
	const save = (format: Format, word: string, has: boolean) => (
		<Button className="button" isDisabled={held || !has} onPress={() => void saveSheets(names, format)}>
			{word}
		</Button>
	);
	return (
		<>
			<div className="pair">
				{save(
					"dxf",
					"Save DXF",
					sheets.some(({ figures }) => figures > 0),
				)}
				{save("svg", "Save SVG", true)}
				{save(
					"csv",
					"Save CSV",
					sheets.some(({ tables }) => tables > 0),
				)}
			</div>
			<p className="quiet">
				Drawings for other programs, pages as pictures, tables for a spreadsheet; several files come in one ZIP.
			</p>
		</>
	);
}
