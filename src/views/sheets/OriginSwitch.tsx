import { ORIGINS } from '../../core/instrument/placeByX.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { ORIGIN_WORDS } from '../../words/measuring.ts'
import { Switch } from '../../ui/Switch.tsx'
import { useSheetBench } from './sheetBench.ts'

/** Where places are measured from: the shop's habit, changed here for every sheet. */
export function OriginSwitch() {
  const { origin, chooseOrigin } = useSheetBench()
  return (
    <Switch
      label={TABLE_WORDS.measureFrom}
      value={origin}
      choices={ORIGINS.map((value) => ({ value, label: ORIGIN_WORDS[value].name }))}
      onChoose={chooseOrigin}
    />
  )
}
