import { Button } from "react-aria-components";
import { setTheme, type Theme, useScreen } from "../desk/screen.ts";

/** Goes round light paper, dark paper and whatever the system has. */
export function ThemeButton() {
	const theme = useScreen((state) => state.theme);
	const next = NEXT[theme];
	return (
		<Button
			className="button button-icon"
			aria-label={`Paper: ${WORDS[theme]}. Change to ${WORDS[next]}`}
			onPress={() => setTheme(next)}
		>
			<svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
				<circle
					cx="10"
					cy="10"
					r="7"
					fill={theme === "dark" ? "currentColor" : "none"}
					stroke="currentColor"
					strokeWidth="2"
				/>
				{theme === "system" ? <path d="M10 3a7 7 0 0 1 0 14z" fill="currentColor" /> : null}
			</svg>
		</Button>
	);
}

const NEXT: Readonly<Record<Theme, Theme>> = { system: "light", light: "dark", dark: "system" };

const WORDS: Readonly<Record<Theme, string>> = { system: "as the system", light: "light", dark: "dark" };
