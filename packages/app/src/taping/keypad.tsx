import { Button } from "react-aria-components";

interface Props {
	/** Lengths in inches are typed with a space and a fraction. */
	readonly inches: boolean;
	/** A figure under 0 may be. */
	readonly signed: boolean;
	readonly press: (key: string) => void;
	readonly erase: () => void;
	readonly take: () => void;
}

/** Large keys for one figure. A keyboard types into the field above instead. */
export function Keypad({ inches, signed, press, erase, take }: Props) {
	const key = (text: string, name = text, className = "") => (
		<Button className={`key ${className}`} aria-label={name} onPress={() => press(text)}>
			{text === " " ? <span className="key-word">space</span> : text === "-" ? "−" : text}
		</Button>
	);
	const [space, minus] = [inches, signed && !inches];
	return (
		<fieldset className="keypad">
			<legend className="hidden">Keys</legend>
			{key("1")}
			{key("2")}
			{key("3")}
			<Button
				className={space || minus ? "key key-erase" : "key key-tall key-erase"}
				aria-label="Backspace"
				onPress={erase}
			>
				<Erase />
			</Button>
			{key("4")}
			{key("5")}
			{key("6")}
			{space ? key(" ", "space", "key-space") : null}
			{minus ? key("-", "minus", "key-minus") : null}
			{key("7")}
			{key("8")}
			{key("9")}
			<Button className="key key-tall key-take" onPress={take}>
				Take
			</Button>
			{key(".", "decimal point", "key-point")}
			{key("0", "0", inches ? "" : "key-wide")}
			{inches ? key("/", "fraction bar", "key-bar") : null}
			{inches && signed ? key("-", "minus", "key-last key-minus") : null}
		</fieldset>
	);
}

function Erase() {
	return (
		<svg viewBox="0 0 28 20" width="28" height="20" aria-hidden="true">
			<path
				d="M9 2H25V18H9L2 10ZM13 6.5 20 13.5M20 6.5 13 13.5"
				fill="none"
				stroke="currentColor"
				strokeWidth="2"
				strokeLinejoin="round"
				strokeLinecap="round"
			/>
		</svg>
	);
}
