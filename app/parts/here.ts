/** What every worker sends first, as soon as its script runs. */
export const HERE = 'here';
