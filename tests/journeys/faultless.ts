import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** The rules that look at colours: all others find the same on light paper and on dark. */
const OF_COLOUR = ["color-contrast", "link-in-text-block"];

/** Nothing is found wrong with a page as it stands, or with some parts of it, on light paper and on dark. */
export async function isFaultless(page: Page, parts: readonly string[] = []): Promise<void> {
	await page.emulateMedia({ colorScheme: "light" });
	await obeys(examined(page, parts));
	await page.emulateMedia({ colorScheme: "dark" });
	await obeys(examined(page, parts).withRules(OF_COLOUR));
	await page.emulateMedia({ colorScheme: "light" });
}

function examined(page: Page, parts: readonly string[]): AxeBuilder {
	// No page of ours has frames: the way meant for those opens a page of its own for every look.
	const axe = new AxeBuilder({ page }).setLegacyMode();
	return parts.reduce((builder, part) => builder.include(part), axe);
}

/** A look that finds no rule to apply has looked at nothing. */
async function obeys(axe: AxeBuilder): Promise<void> {
	const { violations, passes } = await axe.analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
	expect(passes.length).toBeGreaterThan(0);
}
