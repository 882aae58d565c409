type Under<Prefix extends string, Name extends string> = { [Own in Name as `${Prefix}${Own}`]: string }

/** Names of one part's numbers under their keys. */
export const under = <Prefix extends string, Name extends string>(prefix: Prefix, names: Record<Name, string>) =>
  Object.fromEntries(Object.entries(names).map(([name, said]) => [`${prefix}${name}`, said])) as Under<Prefix, Name>
