import "../styles/commands.css";
import { KeyCaps } from "./key-caps.tsx";
import { keyGroups } from "./keys.ts";

/** Every key, by where it holds. */
export function KeysSheet() {
	return (
		<div className="key-groups">
			{keyGroups.map(({ title, lines }) => (
				<section key={title}>
					<h3>{title}</h3>
					<dl>
						{lines.map(({ keys, does }) => (
							<div key={does}>
								<dt>
									{keys.map((each) => (
										<KeyCaps key={each} keys={each} />
									))}
								</dt>
								<dd>{does}</dd>
							</div>
						))}
					</dl>
				</section>
			))}
		</div>
	);
}
