/** Keys as they are read: "Ctrl+Shift+Z". On a Mac, Ctrl is the command key. */
export function KeyCaps({ keys }: { readonly keys: string }) {
	const [combination = "", ...place] = keys.split(" on ");
	return (
		<span className="keys">
			{combination.split(/\+(?=.)/).map((key) => (
				<kbd key={key}>{key === "Ctrl" && IS_MAC ? "⌘" : key}</kbd>
			))}
			{place.length === 0 ? null : <span className="keys-place">on {place.join(" on ")}</span>}
		</span>
	);
}

const IS_MAC = /Mac|iP(hone|ad)/.test(navigator.userAgent);
