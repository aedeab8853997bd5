/** How a bend was when it was ticked as made, lengths mm. */
export interface BendRecord {
	/** "bend-1", "bow-1". */
	readonly name: string;
	readonly radius: number;
	readonly sweep: number;
	/** From the left cut end of its piece to its middle; null where that is not known. */
	readonly on: { readonly piece: string; readonly middle: number } | null;
}

const RECORD = /^(\S+) radius (-?\d+(?:\.\d+)?) sweep (-?\d+(?:\.\d+)?)(?: middle (-?\d+(?:\.\d+)?) of (\S+))?$/;

/** As it is kept among what is done: "bend-1 radius 310 sweep 486.9 middle 1003.2 of A", to the tenth. */
export function bendRecordText({ name, radius, sweep, on }: BendRecord): string {
	const where = on === null ? "" : ` middle ${toTenth(on.middle)} of ${on.piece}`;
	return `${name} radius ${toTenth(radius)} sweep ${toTenth(sweep)}${where}`;
}

/** Null for anything else that is done. */
export function readBendRecord(text: string): BendRecord | null {
	const [, name, radius, sweep, middle, piece] = RECORD.exec(text) ?? [];
	if (name === undefined) return null;
	const on = piece === undefined ? null : { piece, middle: Number(middle) };
	return { name, radius: Number(radius), sweep: Number(sweep), on };
}

export const toTenth = (mm: number): number => Math.round(mm * 10) / 10;
