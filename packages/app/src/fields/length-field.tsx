import { formatLength, parseLength } from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { type Reading, TypedField } from "./typed-field.tsx";

interface Props {
	readonly label: string;
	/** mm; null where nothing is set. */
	readonly value: number | null;
	/** mm; shown faintly while nothing is set. */
	readonly instead?: number | null;
	/** mm; under 0 where a length may be. */
	readonly least?: number;
	readonly greatest?: number;
	readonly commit: (mm: number) => string | null;
	readonly clear?: () => string | null;
	readonly labelHidden?: boolean;
	readonly onFocus?: () => void;
}

/** A length, typed in any unit that the length parser takes, shown in the job's. */
export function LengthField({ value, instead, least, greatest, ...rest }: Props) {
	const unit = useDesk((desk) => desk.shown.display.length);
	const show = (mm: number) => formatLength(mm, unit, { precision: isWhole(mm) ? 0 : 1 });

	function read(text: string): Reading<number> {
		const parsed = parseLength(text, unit, { negative: least !== undefined && least < 0 });
		if (!parsed.ok) return parsed;
		if (least !== undefined && parsed.value < least)
			return { ok: false, message: `${show(parsed.value)} is too small: at least ${show(least)}.` };
		if (greatest !== undefined && parsed.value > greatest)
			return { ok: false, message: `${show(parsed.value)} is too large: at most ${show(greatest)}.` };
		return { ok: true, value: parsed.value };
	}

	const hint = instead === undefined || instead === null ? {} : { instead: `${show(instead)}${ITALIC_ROOM}` };
	const suffix = unit === "in" || rest.labelHidden ? {} : { unit };
	return <TypedField text={value === null ? "" : show(value)} read={read} {...hint} {...suffix} {...rest} />;
}

/** A thin space, without which the browser clips the last slanted mark of an inch. */
const ITALIC_ROOM = "\u2009";

/** Whole to a tenth of a millimetre: a figure that was typed with a tenth keeps it. */
function isWhole(mm: number): boolean {
	return Math.abs(mm - Math.round(mm)) < 0.05;
}
