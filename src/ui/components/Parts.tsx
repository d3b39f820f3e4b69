import { Fragment, type ReactNode } from 'react';

/** A message with more than text in it, part by part. */
export function Parts({ of: parts }: { of: readonly ReactNode[] }) {
  return parts.map((part, index) => <Fragment key={index}>{part}</Fragment>);
}
