import { main } from "@baywright/cli";
import { expect, test } from "vitest";
import { jobText } from "./run.ts";

/** A world in which writing fails, as on a full disk. */
function brokenWorld(debug: boolean) {
	const said: string[] = [];
	const world = {
		folder: ".",
		debug,
		out: () => {
			throw new Error("no space left\non the disk");
		},
		err: (text: string) => said.push(text),
		input: async () => new TextEncoder().encode(jobText()),
	};
	return { world, said };
}

test.each([
	[["plan", "-"], "baywright: standard input: failed: no space left\n"],
	[["--help"], "baywright: failed: no space left\n"],
	[["corner", "--angle", "90", "--projection", "40", "--radius", "300"], "baywright: failed: no space left\n"],
])("a failure inside %j is one line and status 1", async (args, line) => {
	const { world, said } = brokenWorld(false);
	expect(await main(args, world)).toBe(1);
	expect(said).toEqual([line]);
});

test("with its stack for who asks", async () => {
	const { world, said } = brokenWorld(true);
	expect(await main(["--help"], world)).toBe(1);
	expect(said).toHaveLength(2);
	expect(said[1]).toContain("failure.test");
});
