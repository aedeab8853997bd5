import { builtInCloths, type Cloth, type Curtain, type Job } from "@baywright/setout";
import { desk } from "./desk.ts";
import { editBay } from "./edit-bay.ts";

/** The cloths there are to choose from: the job's own, then the built-in ones that it has no copy of. */
export const clothsOf = ({ cloths }: Pick<Job, "cloths">): readonly Cloth[] => [
	...cloths,
	...builtInCloths.filter(({ id }) => cloths.every((own) => own.id !== id)),
];

/** Sets figures of a cloth as one step; a built-in one is first copied into the job under its own id. Null, as a field takes it. */
export function editCloth(id: string, label: string, part: Partial<Cloth>): null {
	const { job, commit } = desk.getState();
	const copied = job.cloths.some((own) => own.id === id)
		? job.cloths
		: [...job.cloths, ...builtInCloths.filter((cloth) => cloth.id === id)];
	commit(label, { ...job, cloths: copied.map((cloth) => (cloth.id === id ? { ...cloth, ...part } : cloth)) });
	return null;
}

/** A new cloth like the one that is given, under an id of its own. */
export function addCloth(like: Cloth): string {
	const { job, commit } = desk.getState();
	const taken = new Set(clothsOf(job).map(({ id }) => id));
	let number = 1;
	while (taken.has(`cloth-${number}`)) number++;
	const id = `cloth-${number}`;
	commit("add a cloth", { ...job, cloths: [...job.cloths, { ...like, id, name: `Own cloth ${number}` }] });
	return id;
}

/** Takes a cloth out of the job: one of its own that no curtain is made of, or the copy of a built-in one, which is then as it came. */
export function removeCloth(id: string): void {
	const { job, commit } = desk.getState();
	commit("remove a cloth", { ...job, cloths: job.cloths.filter((cloth) => cloth.id !== id) });
}

/** Makes one curtain of a cloth, or all; where the job gives none, those that hang as the track is drawn. */
export function makeOfCloth(curtain: number | null, cloth: string | null): void {
	const put = (one: Curtain): Curtain => ({ ...one, cloth });
	editBay("cloth", (bay) => ({
		...bay,
		curtains:
			bay.curtains.length === 0
				? [put(PLAIN_CURTAIN)]
				: bay.curtains.map((each, i) => (curtain === null || i === curtain ? put(each) : each)),
	}));
}

/** A curtain of which nothing is said yet: it hangs as the track is drawn. */
export const PLAIN_CURTAIN: Curtain = {
	from: null,
	to: null,
	stacks: "auto",
	cloth: null,
	heading: "pencil",
	fullness: 2,
	drop: null,
};
