import { Component, type ReactNode } from 'react';
import { saveText } from '../keep/hand-over.ts';
import { rawText } from './session.ts';
import { words } from './words.ts';

interface State {
  readonly error: unknown;
}

/** Instead of a white screen: what happened, that nothing is lost, and the journal as a file straight from the disk. */
export class Guard extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { error: null };

  static getDerivedStateFromError(error: unknown): State {
    return { error };
  }

  private readonly toStart = () => {
    location.hash = '#/';
    this.setState({ error: null });
  };

  override render() {
    const { error } = this.state;
    if (error === null) return this.props.children;
    const { shell } = words;
    return (
      <main className="broken" role="alert">
        <h1>{shell.worseTitle}</h1>
        <p>{shell.worseText}</p>
        <p className="keys">
          <button type="button" className="key key-solid" onClick={() => location.reload()}>
            {shell.updateReload}
          </button>
          <button type="button" className="key" onClick={() => rawText().then((text) => saveText(text))}>
            {shell.saveFile}
          </button>
          <button type="button" className="key" onClick={this.toStart}>
            {shell.toStart}
          </button>
        </p>
        <details>
          <summary>{shell.worseDetail}</summary>
          <pre>{error instanceof Error ? `${error.name}: ${error.message}` : String(error)}</pre>
        </details>
      </main>
    );
  }
}
