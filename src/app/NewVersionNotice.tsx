import { useOffline, useWorkshop } from '../views/workshop.ts'
import { NEW_VERSION_WORDS } from '../words/newVersion.ts'

/** Under the work, where nothing in hand moves when it comes: a newer version waits until it is asked for. */
export function NewVersionNotice() {
  const { offline } = useWorkshop()
  const newVersion = useOffline((state) => state.newVersion)
  const isPutOff = useOffline((state) => state.isPutOff)
  return (
    <output className="new-version">
      {newVersion !== 'none' && !isPutOff && (
        <span className="quiet-notice">
          <span>{NEW_VERSION_WORDS[newVersion]}</span>
          <span className="commands">
            <button className="button" type="button" onClick={() => void offline.takeNewVersion()}>
              {NEW_VERSION_WORDS.take}
            </button>
            <button className="button button-plain" type="button" onClick={offline.putOff}>
              {NEW_VERSION_WORDS.later}
            </button>
          </span>
        </span>
      )}
    </output>
  )
}
