/** What stands for a line of the tally in a later sum: its name, else its number. */
export const lineMark = ({ id, name }) => `[${name || id}]`;
