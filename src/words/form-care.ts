/** What stands on a form about what can hurt someone. The cautions themselves: cautions.ts. */
export const CARE = {
  heading: 'Care',
  /** Above the words to press. */
  stated: 'There is with it',
  /** Behind a caution that no teacher has stated. */
  suggested: 'Suggested by its name or its texts.',
};
