import { useDesk } from "../desk/desk.ts";
import { readLength, showLength } from "./read-length.ts";
import { TypedField } from "./typed-field.tsx";

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
	readonly onRefused?: (refused: boolean) => void;
}

/** A length, typed in any unit that the length parser takes, shown in the job's. */
export function LengthField({ value, instead, least, greatest, ...rest }: Props) {
	const unit = useDesk((desk) => desk.shown.display.length);
	const show = (mm: number) => showLength(mm, unit);
	const read = (text: string) => readLength(text, unit, { least, greatest });
	const hint = instead === undefined || instead === null ? {} : { instead: `${show(instead)}${ITALIC_ROOM}` };
	const suffix = unit === "in" || rest.labelHidden ? {} : { unit };
	return <TypedField text={value === null ? "" : show(value)} read={read} {...hint} {...suffix} {...rest} />;
}

/** A thin space, without which the browser clips the last slanted mark of an inch. */
const ITALIC_ROOM = "\u2009";
