/** Names a part for its whole life, also across files: kind and a number, such as `rack-row-3`. */
export type PartId = string
