/** When feedback on a repetition is given; giving less of it over the weeks helps the movement become a habit. */
export const feedbackModes = ['every-repetition', 'only-outside', 'after-the-set', 'none'] as const;
export type FeedbackMode = (typeof feedbackModes)[number];
