import { parseArgs } from "node:util";
import { quoted } from "./text/plain.ts";

/** An option that stands alone, or one that takes a value: an example of it, for the message. */
export type OptionKind = "alone" | { readonly example: string };

export type Options<Name extends string> =
	| {
			readonly ok: true;
			readonly operands: readonly string[];
			readonly has: (name: Name) => boolean;
			readonly value: (name: Name) => string | undefined;
	  }
	| { readonly ok: false; readonly message: string };

/** Reads what was typed after a command's name. The first thing wrong is named with what is allowed. */
export function readOptions<Name extends string>(
	args: readonly string[],
	known: Readonly<Record<Name, OptionKind>>,
): Options<Name> {
	const kinds = new Map<string, OptionKind>(Object.entries(known));
	const operands: string[] = [];
	const given = new Map<string, string | undefined>();
	for (const token of tokensOf(args, kinds)) {
		if (token.kind === "positional") operands.push(token.value);
		if (token.kind !== "option") continue;
		const { name, rawName, value, inlineValue } = token;
		const refuse = (message: string) => ({ ok: false, message: `option ${message}` }) as const;
		const kind = rawName.startsWith("--") ? kinds.get(name) : undefined;
		if (kind === undefined) return refuse(`${quoted(rawName)}: no such option, allowed ${allowed(kinds)}`);
		if (given.has(name)) return refuse(`--${name}: given twice, allowed once`);
		if (kind === "alone" && value !== undefined) return refuse(`--${name}: found ${quoted(value)}, allowed no value`);
		const missing = value === undefined || (value.startsWith("--") && inlineValue !== true);
		if (kind !== "alone" && missing)
			return refuse(`--${name}: found nothing, allowed a value as in --${name} ${kind.example}`);
		given.set(name, value);
	}
	return { ok: true, operands, has: (name) => given.has(name), value: (name) => given.get(name) };
}

/** Not strict: its own messages run over several lines. */
function tokensOf(args: readonly string[], kinds: ReadonlyMap<string, OptionKind>) {
	const options = Object.fromEntries(
		[...kinds].map(([name, kind]) => [name, { type: kind === "alone" ? "boolean" : "string" } as const]),
	);
	return parseArgs({ args: [...args], options, strict: false, allowPositionals: true, tokens: true }).tokens;
}

const allowed = (kinds: ReadonlyMap<string, OptionKind>): string =>
	[...kinds.keys(), "help"].map((name) => `--${name}`).join(", ");
