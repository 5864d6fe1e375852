/** The page's own style, after the report's: what only a screen that is filled in needs. */
export const pageStyle = `
`;
