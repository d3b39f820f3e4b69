import { Component, type ReactNode } from 'react';

interface Props {
  children: ReactNode;
  /** In place of a screen that could not be drawn. */
  instead: (thrown: unknown, tryAgain: () => void) => ReactNode;
}

/** Catches what a screen throws while it is drawn, so that the rest of the page stays. */
export class ErrorBoundary extends Component<Props, { error: { thrown: unknown } | null }> {
  override state = { error: null as { thrown: unknown } | null };

  static getDerivedStateFromError(thrown: unknown) {
    return { error: { thrown } };
  }

  override render() {
    const { error } = this.state;
    if (error === null) return this.props.children;
    return this.props.instead(error.thrown, () => this.setState({ error: null }));
  }
}
