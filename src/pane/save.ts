/** Files for the maker: pictures as SVG and PNG, workbooks. */
import type { DrawnPicture, Picture } from "./sheet";

/** Pixels of the PNG for one of the picture: sharp on paper and on fine screens. */
const FINENESS = 2;

/** Hands a file to the browser, which saves it where it saves all files. */
export function saveFile(content: BlobPart, type: string, name: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  Object.assign(link, { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
}

/** A name that every system takes for a file. */
export function fileName(title: string): string {
  return (
    title
      .replace(/[\\/:*?"<>|\p{Cc}]+/gu, " ")
      .replace(/\s+/g, " ")
      .trim() || "quilt"
  );
}

/** The picture as an image shows it. */
export function pictureAddress({ svg }: Picture): string {
  return `data:image/svg+xml,${encodeURIComponent(svg)}`;
}

/** The picture in pixels as well. */
export async function drawn(picture: Picture): Promise<DrawnPicture> {
  const image = new Image();
  image.src = pictureAddress(picture);
  await image.decode();
  const { naturalWidth: width, naturalHeight: height } = image;
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width: width * FINENESS, height: height * FINENESS });
  canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
  const png = canvas.toDataURL("image/png").replace(/^.*,/, "");
  return { ...picture, png, width, height };
}

export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}
