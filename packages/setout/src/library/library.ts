import type { Job } from "../job/schema.ts";
import { builtInSystems } from "./built-in.ts";
import type { Cloth } from "./cloth.ts";
import type { Price } from "./price.ts";
import type { TrackSystem } from "./system.ts";

/** What a bay is planned with, beside its own measures. */
export interface Library {
	/** The job's own first, then the built-in ones whose id it does not use. */
	readonly systems: readonly TrackSystem[];
	readonly cloths: readonly Cloth[];
	readonly prices: readonly Price[];
	/** Whose cautions apply. */
	readonly region: Job["region"];
}

export const libraryOf = (job: Job): Library => ({
	systems: [...job.systems, ...builtInSystems.filter(({ id }) => !job.systems.some((own) => own.id === id))],
	cloths: job.cloths,
	prices: job.prices,
	region: job.region,
});

/** The system that a job means by this id: its own, else the built-in one. */
export const findSystem = (job: Pick<Job, "systems">, id: string): TrackSystem | undefined =>
	job.systems.find((own) => own.id === id) ?? builtInSystems.find((system) => system.id === id);
