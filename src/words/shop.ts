/** The shop's own sheet. */
export const SHOP_WORDS = {
  title: 'How does this shop measure?',
  name: 'Name of the shop',
  units: 'What are lengths read in?',
  unitsLead: 'Millimetres are what is kept. Any unit can be typed into any field at any time.',
  origin: 'Where are tables measured from?',
  paper: 'What paper is in the printer?',
  tolerances: 'How close is close enough?',
  tolerancesLead:
    'Starting values are common practice, from no published source. An instrument may have its own. A number without one prints none.',
  none: 'Print none',
  setOne: 'Give it one',
  noTolerance: 'none',
  showAll: 'Show every number that is measured',
  data: 'Where is all this kept?',
  dataLead:
    'On this device, in this browser, and nowhere else. Nothing is sent anywhere. To take an instrument to another device, save it to a file and open it there.',
  persistence: {
    kept: 'The browser has promised to keep it.',
    mayBeCleared:
      'The browser has not promised to keep it: it may clear the store when the disk is full, or, on some tablets, after seven days without a visit. Add the workbench to the home screen, and save everything to a file now and then.',
    unknown: 'This browser does not say whether it keeps it. Save everything to a file now and then.',
    notAsked: 'The browser is asked to keep it at the first save.',
  },
  offline: {
    ready: 'Works without a net.',
    preparing: 'The workbench is being copied to this device, so that it works without a net.',
    failed:
      'It does not work without a net yet: not all of the workbench could be copied to this device. That is tried again when it is opened next.',
    insecure:
      'It does not work without a net here, since over plain http a browser keeps no copy of the workbench: open it over https, or on the machine that serves it.',
    unsupported:
      'It does not work without a net here: this browser keeps no copy of the workbench. Private windows are like that.',
  },
  openFile: 'Open a file',
  saveAll: 'Save everything to a file',
  removeDemo: 'Remove the demo',
  light: 'How light is the bench?',
  lights: { device: 'as the device is set', light: 'dark on light', dark: 'light on dark' },
  paperSizes: { A4: 'A4', Letter: 'Letter' },
} as const
