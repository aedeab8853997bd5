/**
 * `next` with every part that equals its counterpart in `previous` replaced by that counterpart, so that what did not
 * change keeps its identity and nothing that hangs on it is worked out again. Plain JSON values only.
 */
export function share<Value>(previous: unknown, next: Value): Value {
	if (Object.is(previous, next)) return next;
	if (Array.isArray(previous) && Array.isArray(next)) {
		const parts = next.map((part, i) => share(previous[i], part));
		const same = previous.length === parts.length && parts.every((part, i) => Object.is(part, previous[i]));
		return (same ? previous : parts) as Value;
	}
	if (isRecord(previous) && isRecord(next)) {
		const keys = Object.keys(next);
		const parts: Record<string, unknown> = {};
		for (const key of keys) parts[key] = share(previous[key], next[key]);
		const same =
			keys.length === Object.keys(previous).length &&
			keys.every((key) => key in previous && parts[key] === previous[key]);
		return (same ? previous : parts) as Value;
	}
	return next;
}

function isRecord(value: unknown): value is Record<string, unknown> {
	return typeof value === "object" && value !== null && !Array.isArray(value);
}
