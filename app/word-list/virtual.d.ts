/** Made when the page is built, see plugin.ts: the list as src/fasteners/word-list/packed.ts writes it. */
declare module 'virtual:word-list' {
  const packed: string;
  export default packed;
}
