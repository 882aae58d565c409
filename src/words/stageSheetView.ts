/** What stands beside the preview of a stage sheet. */
export const STAGE_SHEET_VIEW_WORDS = {
  title: 'What goes on paper?',
  lead: 'Choose the stages; the pages beside them are what the printer gets.',
  stages: 'Stages',
  all: 'All',
  notDone: 'Not done yet',
  none: 'None',
  done: 'done',
  paper: 'Paper',
  sizes: { A4: 'A4', Letter: 'Letter' },
  pages: 'Pages',
  count: (stages: number, pages: number) =>
    `${stages} ${stages === 1 ? 'stage' : 'stages'} on ${pages} ${pages === 1 ? 'page' : 'pages'}`,
  print: 'Print',
  printHint: 'Print at full size on the paper chosen here, without added margins.',
  empty: 'No stage is chosen. Tick one to see its sheet.',
  page: (page: number, count: number) => `Page ${page} of ${count}`,
} as const
