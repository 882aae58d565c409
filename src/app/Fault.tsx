import { Component, type ReactNode } from 'react'
import { useStore } from 'zustand'
import { reloadNewest } from '../device/offline/reloadNewest.ts'
import { FAULT_WORDS } from '../words/instrument.ts'
import { faults, saveEverything } from './faults.ts'

/** One sentence, and a way to take everything along. */
export function FaultPage({ sentence = FAULT_WORDS.sentence }: { readonly sentence?: string }) {
  return (
    <main className="fault" role="alert">
      <h1>{sentence}</h1>
      <div className="commands">
        <button className="button button-next" type="button" onClick={() => void saveEverything()}>
          {FAULT_WORDS.saveCopy}
        </button>
        <button className="button" type="button" onClick={() => void reloadNewest()}>
          {FAULT_WORDS.reload}
        </button>
      </div>
    </main>
  )
}

/** Catches what a view throws: never a blank page. React knows no function that does this. */
export class FaultBoundary extends Component<{ readonly children: ReactNode }, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false }
  static getDerivedStateFromError() {
    return { hasFailed: true }
  }
  override render() {
    return this.state.hasFailed ? <FaultPage /> : this.props.children
  }
}

/** The same across the top of the sheet, where the views still stand. */
export function FaultBanner() {
  const kind = useStore(faults, (state) => state.kind)
  if (kind === 'none') return null
  const sentence = {
    unexpected: FAULT_WORDS.sentence,
    newVersion: FAULT_WORDS.newVersion,
    blocked: FAULT_WORDS.blocked,
  }[kind]
  return (
    <div className="banner" role="alert">
      <p>{sentence}</p>
      <div className="commands">
        {kind === 'unexpected' && (
          <button className="button" type="button" onClick={() => void saveEverything()}>
            {FAULT_WORDS.saveCopy}
          </button>
        )}
        {kind !== 'blocked' && (
          <button className="button" type="button" onClick={() => void reloadNewest()}>
            {FAULT_WORDS.reload}
          </button>
        )}
        {kind !== 'newVersion' && (
          <button className="button button-plain" type="button" onClick={() => faults.setState({ kind: 'none' })}>
            {FAULT_WORDS.goOn}
          </button>
        )}
      </div>
    </div>
  )
}
