/** A title as files may be called: small letters, figures and dashes; "bay" where nothing is left of it. */
export function plainName(title: string): string {
	const plain = title
		.normalize("NFKD")
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, "-")
		.replace(/^-|-$/g, "");
	return plain === "" ? "bay" : plain;
}
