import { afterEach, beforeEach, expect, test, vi } from "vitest";

/** As much of a browser's store as is asked of it. */
function store(): Storage {
	const kept = new Map<string, string>();
	return {
		getItem: (key: string) => kept.get(key) ?? null,
		setItem: (key: string, value: string) => void kept.set(key, value),
	} as Storage;
}

beforeEach(() => {
	vi.stubGlobal("localStorage", store());
	vi.stubGlobal("sessionStorage", store());
	vi.stubGlobal("document", { documentElement: { dataset: {} } });
});

afterEach(() => {
	vi.unstubAllGlobals();
	vi.resetModules();
});

const load = () => {
	vi.resetModules();
	return import("../../../packages/app/src/desk/screen.ts");
};

test("the stage and the paper are there again after a reload", async () => {
	const first = await load();
	expect([first.screen.getState().stage, first.screen.getState().theme]).toEqual(["survey", "system"]);
	first.setStage("order");
	first.setTheme("dark");
	const second = await load();
	expect([second.screen.getState().stage, second.screen.getState().theme]).toEqual(["order", "dark"]);
});

test("a stage that this version does not know is passed over", async () => {
	sessionStorage.setItem("baywright-stage", "garden");
	expect((await load()).screen.getState().stage).toBe("survey");
});

test("a browser that keeps nothing starts at the survey", async () => {
	vi.stubGlobal("sessionStorage", undefined);
	vi.stubGlobal("localStorage", undefined);
	const { screen, setStage } = await load();
	setStage("track");
	expect(screen.getState().stage).toBe("track");
	expect(screen.getState().theme).toBe("system");
});
