/** What no sentence to a patient may say, and what a broken template leaves behind. */
export const unfit = /\b(fail|bad|wrong|abnormal|undefined|null|NaN)/i;
