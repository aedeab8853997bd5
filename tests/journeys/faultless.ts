import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, type Page } from "@playwright/test";
import type { AxeResults, RunOptions } from "axe-core";

const SOURCE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The rules that look at colours: all others find the same on light paper and on dark. */
const OF_COLOUR = ["color-contrast", "link-in-text-block"];

/** Nothing is found wrong with a page as it stands, or with some parts of it, on light paper and on dark. */
export async function isFaultless(page: Page, parts: readonly string[] = []): Promise<void> {
	await page.emulateMedia({ colorScheme: "light" });
	await obeys(page, parts, {});
	await page.emulateMedia({ colorScheme: "dark" });
	await obeys(page, parts, { runOnly: OF_COLOUR });
	await page.emulateMedia({ colorScheme: "light" });
}

/** A look that finds no rule to apply has looked at nothing. */
async function obeys(page: Page, parts: readonly string[], options: RunOptions): Promise<void> {
	if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(SOURCE);
	const { faults, obeyed } = await page.evaluate(examined, { parts, options });
	expect(faults).toEqual([]);
	expect(obeyed).toBeGreaterThan(0);
}

/** In the page. Where each of a thousand elements is that obeys a rule, nobody reads: leaving that out takes half the time. */
async function examined({ parts, options }: { readonly parts: readonly string[]; readonly options: RunOptions }) {
	const { axe } = window as unknown as { axe: { run(within: unknown, options: RunOptions): Promise<AxeResults> } };
	// Buttons take on the colours of the other paper by and by.
	for (const change of document.getAnimations()) if (change instanceof CSSTransition) change.finish();
	const within = parts.length === 0 ? document : { include: parts.map((part) => [part]) };
	const { violations, passes } = await axe.run(within, { ...options, resultTypes: ["violations"] });
	return {
		faults: violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`),
		obeyed: passes.length,
	};
}
