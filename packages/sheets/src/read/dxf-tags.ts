/**
 * The syntax of a text DXF: pairs of lines, a group code and a value, in sections of entities. Source: DXF reference, "Group codes in numerical order" and
 * "General DXF file structure". Ours, because the readers to be had lose the corners of an LWPOLYLINE behind a group 91, never end on a POLYLINE
 * without vertices, and write to the console; one of them holds this to its word in the tests.
 */

export interface Tag {
	readonly code: number;
	readonly value: string;
}

/** Something drawn, or an entry of a table: all groups from one group 0 to the next. */
export interface TagGroup {
	/** The value of its group 0: `LINE`. */
	readonly type: string;
	readonly tags: readonly Tag[];
	/** Of its group 0, counted from 1. */
	readonly line: number;
}

export interface DxfSections {
	readonly header: ReadonlyMap<string, string>;
	/** Of the table of layers. */
	readonly layers: readonly TagGroup[];
	/** Null where there is no such section. */
	readonly entities: readonly TagGroup[] | null;
}

export type ReadSections =
	| { readonly ok: true; readonly sections: DxfSections }
	| { readonly ok: false; readonly line: number; readonly found: string };

/** The header's variables (their first value), the layers and what is drawn. Refuses a line that should be a group code and is none. */
export function readSections(text: string): ReadSections {
	const lines = text.split(/\r\n|\r|\n/);
	const header = new Map<string, string>();
	const layers: TagGroup[] = [];
	let entities: TagGroup[] | null = null;
	let section = "";
	let variable = "";
	let group: { type: string; tags: Tag[]; line: number } | null = null;
	for (let i = 0; i + 1 < lines.length; i += 2) {
		const codeText = (lines[i] as string).trim();
		if (!/^-?\d{1,5}$/.test(codeText)) {
			// Blank lines at the very end are no fault.
			if (codeText === "" && lines.slice(i).every((line) => line.trim() === "")) break;
			return { ok: false, line: i + 1, found: codeText };
		}
		const tag = { code: Number(codeText), value: (lines[i + 1] as string).trim() };
		if (tag.code === 0) {
			if (tag.value === "EOF") break;
			group = { type: tag.value, tags: [], line: i + 2 };
			if (tag.value === "ENDSEC") section = "";
			else if (section === "ENTITIES") entities?.push(group);
			else if (section === "TABLES" && tag.value === "LAYER") layers.push(group);
		} else if (group?.type === "SECTION" && tag.code === 2 && section === "") {
			section = tag.value;
			if (section === "ENTITIES") entities ??= [];
		} else if (section === "HEADER") {
			if (tag.code === 9) variable = tag.value;
			else if (!header.has(variable)) header.set(variable, tag.value);
		} else group?.tags.push(tag);
	}
	return { ok: true, sections: { header, layers, entities } };
}

/** The first value of a group as text; undefined where it has none. */
export const textAt = ({ tags }: TagGroup, code: number): string | undefined =>
	tags.find((tag) => tag.code === code)?.value;

/** The first value of a group as a number, NaN where it is none; `instead` where it is left out. */
export function numberAt(group: TagGroup, code: number, instead = 0): number {
	const text = textAt(group, code);
	return text === undefined ? instead : numberOf(text);
}

export const numberOf = (text: string): number => (text.trim() === "" ? Number.NaN : Number(text));
