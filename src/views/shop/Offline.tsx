import { NEW_VERSION_WORDS } from '../../words/newVersion.ts'
import { SHOP_WORDS } from '../../words/shop.ts'
import { useOffline, useWorkshop } from '../workshop.ts'

/** Whether the program works without a net on this device, and the newer version that waits here when it was put off. */
export function Offline() {
  const { offline } = useWorkshop()
  const readiness = useOffline((state) => state.readiness)
  const newVersion = useOffline((state) => state.newVersion)
  const isPutOff = useOffline((state) => state.isPutOff)
  return (
    <>
      {readiness !== null && <p className="second">{SHOP_WORDS.offline[readiness]}</p>}
      {newVersion !== 'none' && isPutOff && (
        <div className="commands">
          <p>{NEW_VERSION_WORDS[newVersion]}</p>
          <button className="button" type="button" onClick={() => void offline.takeNewVersion()}>
            {NEW_VERSION_WORDS.take}
          </button>
        </div>
      )}
    </>
  )
}
