/** The page is about to go. The first leaves the database time to store what it is told; a phone gives only the second. */
export const LEAVING = ["beforeunload", "pagehide"] as const;
