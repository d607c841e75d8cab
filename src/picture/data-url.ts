/** The file that a base64 data URL holds, with its type. */
export function fileOfDataUrl(url: string): Blob {
  const [head = '', letters = ''] = url.split(',');
  const bytes = Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
  return new Blob([bytes], { type: /^data:([^;]+)/.exec(head)?.[1] ?? '' });
}
