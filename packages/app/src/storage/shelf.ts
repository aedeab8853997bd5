import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** The open job as it lies in the browser's database. */
export interface Stored {
	/** A job file's content; read it as any other job file. */
	readonly job: unknown;
	/** One more with every write, whichever tab writes. */
	readonly revision: number;
	/** Milliseconds since 1970. */
	readonly at: number;
}

interface Schema extends DBSchema {
	jobs: { key: string; value: Stored };
	aside: { key: number; value: Stored };
}

export type Put = { readonly kind: "put"; readonly revision: number } | { readonly kind: "overtaken" };

export interface Shelf {
	/** The open job, or null where none was ever stored. */
	take(): Promise<Stored | null>;
	/** Stores the job unless the shelf holds a later revision than `known`; then it touches nothing. */
	put(job: unknown, known: number): Promise<Put>;
	/** As `put`, but asked for in one go and unchecked: a page that is leaving waits for no answer. */
	putAtOnce(job: unknown, known: number): Promise<Put>;
	/** Keeps a job that another takes the place of; the oldest beyond a dozen make room. */
	putAside(job: unknown): Promise<void>;
	/** The jobs put aside, the latest first. */
	aside(): Promise<readonly Stored[]>;
}

const OPEN = "open";

/** Opens the browser's database. Rejects where the browser has none to give. */
export async function openShelf(): Promise<Shelf> {
	const db = await openDB<Schema>("baywright", 1, {
		upgrade: (fresh) => {
			fresh.createObjectStore("jobs");
			fresh.createObjectStore("aside", { autoIncrement: true });
		},
	});
	return {
		take: async () => (await db.get("jobs", OPEN)) ?? null,
		put: (job, known) => put(db, job, known),
		putAtOnce: (job, known) => putAtOnce(db, job, known),
		putAside: (job) => putAside(db, job),
		aside: async () => (await db.getAll("aside")).reverse(),
	};
}

async function put(db: IDBPDatabase<Schema>, job: unknown, known: number): Promise<Put> {
	const transaction = db.transaction("jobs", "readwrite");
	const stored = await transaction.store.get(OPEN);
	if ((stored?.revision ?? 0) > known) {
		await transaction.done;
		return { kind: "overtaken" };
	}
	const revision = known + 1;
	await Promise.all([transaction.store.put({ job, revision, at: Date.now() }, OPEN), transaction.done]);
	return { kind: "put", revision };
}

async function putAtOnce(db: IDBPDatabase<Schema>, job: unknown, known: number): Promise<Put> {
	const transaction = db.transaction("jobs", "readwrite");
	const revision = known + 1;
	const put = transaction.store.put({ job, revision, at: Date.now() }, OPEN);
	transaction.commit();
	await Promise.all([put, transaction.done]);
	return { kind: "put", revision };
}

/** As many as anyone looks through. */
const MOST_ASIDE = 12;

async function putAside(db: IDBPDatabase<Schema>, job: unknown): Promise<void> {
	const transaction = db.transaction("aside", "readwrite");
	const keys = await transaction.store.getAllKeys();
	const spare = keys.slice(0, Math.max(0, keys.length + 1 - MOST_ASIDE));
	await Promise.all([
		...spare.map((key) => transaction.store.delete(key)),
		transaction.store.add({ job, revision: 0, at: Date.now() }),
		transaction.done,
	]);
}
