import type { Language } from "../words";

/** What only the screen of photos says; it comes with that screen. */
export interface PhotoWords {
  take: string;
  none: string;
  noPicture: string;
  working: string;
  /** by the time it was taken */
  of(time: string): string;
  here: string;
  there: string;
  refused: string;
  note: string;
  care: string;
}

export const photoWords: Record<Language, PhotoWords> = {
  en: {
    take: "Take a photo", none: "No photo yet.", noPicture: "That file is no picture that this phone can read.", working: "One moment …",
    of: (time) => `Photo taken at ${time}`, here: "only on this phone", there: "at the club", refused: "The server does not take it:", note: "What it shows",
    care: "The place and the phone's name stay out of the picture.",
  },
  es: {
    take: "Hacer una foto", none: "Aún no hay fotos.", noPicture: "Ese archivo no es una imagen que este teléfono sepa leer.", working: "Un momento …",
    of: (time) => `Foto hecha a las ${time}`, here: "solo en este teléfono", there: "en el club", refused: "El servidor no la acepta:", note: "Qué se ve",
    care: "El lugar y el nombre del teléfono no quedan en la imagen.",
  },
  ja: {
    take: "写真を撮る", none: "写真はまだありません。", noPicture: "この電話で読める画像ではありません。", working: "お待ちください…",
    of: (time) => `${time} に撮った写真`, here: "この電話だけ", there: "クラブにあり", refused: "サーバーが受け取りません：", note: "何の写真か",
    care: "場所と電話の名前は画像に残りません。",
  },
  th: {
    take: "ถ่ายรูป", none: "ยังไม่มีรูป", noPicture: "ไฟล์นี้ไม่ใช่รูปที่เครื่องนี้อ่านได้", working: "รอสักครู่ …",
    of: (time) => `รูปที่ถ่ายเวลา ${time}`, here: "อยู่ในเครื่องนี้เท่านั้น", there: "อยู่ที่สโมสรแล้ว", refused: "เซิร์ฟเวอร์ไม่รับ:", note: "รูปนี้คืออะไร",
    care: "ตำแหน่งและชื่อเครื่องไม่ติดไปกับรูป",
  },
};
