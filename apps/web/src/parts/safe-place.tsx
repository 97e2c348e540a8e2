import { Component, type ReactNode } from 'react';
import { Problem } from './problem.tsx';

interface Props {
  /** Turns what went wrong into the sentence that is shown. */
  readonly sentenceOf: (error: unknown) => string;
  /** When this changes, the place is tried again. */
  readonly resetOn: unknown;
  readonly children: ReactNode;
}

interface State {
  readonly error: unknown;
  readonly of: unknown;
}

/** A place whose trouble stays its own: what stands around it goes on working, and nothing that was entered is lost. */
export class SafePlace extends Component<Props, State> {
  override state: State = { error: undefined, of: undefined };

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { error };
  }

  static getDerivedStateFromProps({ resetOn }: Props, { of }: State): Partial<State> | null {
    return Object.is(resetOn, of) ? null : { of: resetOn, error: undefined };
  }

  override render(): ReactNode {
    if (this.state.error === undefined) return this.props.children;
    return <Problem says={this.props.sentenceOf(this.state.error)} />;
  }
}
