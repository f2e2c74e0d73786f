const LONGEST = 1024;
const QUALITY = 0.7;

/**
 * A picture from the camera, scaled down on the device so that many fit into a backup.
 * @param {Blob} file
 * @returns {Promise<string>} a JPEG as a data address; rejects when the browser can't read the file
 */
export async function shrinkPicture(file) {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const context = canvas.getContext("2d");
  if (!context) throw new Error("This browser can’t draw a picture.");
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return canvas.toDataURL("image/jpeg", QUALITY);
}
