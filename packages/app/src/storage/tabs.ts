type Message = { readonly kind: "hello" | "here" | "bye" } | { readonly kind: "stored"; readonly revision: number };

export interface Tabs {
	tellStored(revision: number): void;
}

interface Hearing {
	/** Another tab came, or the last other one went. */
	onCompany(company: boolean): void;
	/** Another tab stored the job. */
	onStored(revision: number): void;
}

/** How often a tab in company asks whether it still is, ms. */
const ASK_MS = 5000;

/** How long an answer may take, ms. */
const ANSWER_MS = 1000;

/** Tabs of one browser tell each other that they are there and what they stored. */
export function listenToTabs({ onCompany, onStored }: Hearing): Tabs | null {
	if (typeof BroadcastChannel === "undefined") return null;
	const channel = new BroadcastChannel("baywright");
	const tell = (message: Message) => channel.postMessage(message);
	let company = false;
	let heard = false;

	function inCompany(now: boolean): void {
		if (now === company) return;
		company = now;
		onCompany(now);
	}

	/** A tab that crashed says no goodbye: only silence tells. */
	function ask(): void {
		heard = false;
		tell({ kind: "hello" });
		setTimeout(() => inCompany(heard), ANSWER_MS);
	}

	channel.onmessage = ({ data }: MessageEvent<Message>) => {
		if (data.kind === "bye") {
			ask();
			return;
		}
		heard = true;
		inCompany(true);
		if (data.kind === "hello") tell({ kind: "here" });
		if (data.kind === "stored") onStored(data.revision);
	};
	addEventListener("pagehide", () => tell({ kind: "bye" }));
	setInterval(() => {
		if (company) ask();
	}, ASK_MS);
	ask();
	return { tellStored: (revision) => tell({ kind: "stored", revision }) };
}
