import type { LabelWish } from "../paper/labels.ts";
import type { TemplateDrawing } from "./template-drawing.ts";

/** Places (mm) as near as this are the same on paper. */
const SAME = 0.05;

/** Whether one paper serves for both. */
export const isSame = (a: TemplateDrawing, b: TemplateDrawing): boolean =>
	a.bones.length === b.bones.length &&
	a.labels.length === b.labels.length &&
	a.labels.every(({ lines }, i) => lines.slice(1).join("\n") === b.labels[i]?.lines.slice(1).join("\n")) &&
	a.bones.every(({ x, y }, i) => Math.hypot(x - (b.bones[i]?.x ?? Infinity), y - (b.bones[i]?.y ?? Infinity)) < SAME);

/** The labels of drawings that are the same: each says all that it stands for. */
export function labelsOfAll(all: readonly TemplateDrawing[]): LabelWish[] {
	const [first] = all;
	return (first?.labels ?? []).map((wish, i) => {
		const names = [...new Set(all.map(({ labels }) => labels[i]?.lines[0] ?? ""))];
		return { ...wish, lines: [joined(names), ...wish.lines.slice(1)] };
	});
}

/** `Bracket 2` and `Bracket 5` are `Brackets 2, 5`. */
function joined(names: readonly string[]): string {
	const [first = "", ...others] = names;
	const stem = /^(\D*)\d+$/.exec(first)?.[1];
	if (stem === undefined || others.length === 0 || !others.every((name) => name.startsWith(stem)))
		return names.join(" / ");
	return `${stem.trim()}s ${names.map((name) => name.slice(stem.length)).join(", ")}`;
}
