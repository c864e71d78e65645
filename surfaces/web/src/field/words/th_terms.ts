// Names of the tables of measured fields and of kinds of work.
export const terms: Record<string, string> = {
  firmness: "ความแข็ง", penetration: "ความลึกที่จม", soil_moisture: "ความชื้นดิน", clipping_volume: "ปริมาณเศษหญ้า", height_of_cut: "ความสูงตัด",
  organic_matter_0_20: "อินทรียวัตถุ 0–20 mm", organic_matter_20_40: "อินทรียวัตถุ 20–40 mm", organic_matter_40_60: "อินทรียวัตถุ 40–60 mm", organic_matter_60_80: "อินทรียวัตถุ 60–80 mm",
  thatch_depth: "ความหนาแทช", root_depth: "ความลึกราก", infiltration: "การซึมน้ำ", salinity: "ความเค็ม", soil_ph: "pH ดิน", soil_temperature: "อุณหภูมิดิน",
  surface_temperature: "อุณหภูมิผิว", grass_cover: "หญ้าคลุม", holes_closed: "รูที่ปิดแล้ว", disease_cover: "พื้นที่เป็นโรค", ball_marks: "รอยลูกตก",

  coring: "เจาะรูดึงดิน", solid_tining: "เจาะรูตัน", needle_tining: "เจาะรูเข็ม", slicing: "กรีดร่อง", scarifying: "ขูดแทช", verticutting: "ตัดแนวดิ่ง", grooming: "หวีหญ้า",
  topdressing: "โรยทราย", injection: "ฉีดอัด", drainage: "ระบายน้ำ", overseeding: "หว่านเสริม", turfing: "ปูหญ้า", rolling: "บดกรีน", mowing: "ตัดหญ้า", brushing: "แปรง",
  blowing: "เป่าลม", watering: "รดน้ำ", feeding: "ใส่ปุ๋ย", growth_regulator: "สารชะลอโต", wetting_agent: "สารช่วยซึม", plant_protection: "ป้องกันโรคและแมลง", closed: "ปิดกรีน",

  tine_diameter: "ขนาดเข็มเจาะ", diameter_measured: "วัดขนาดที่", spacing_along: "ระยะตามยาว", spacing_across: "ระยะตามขวาง", depth: "ความลึก", cores: "แท่งดิน", sand: "ทราย",
  sand_order: "ลำดับทราย", passes: "จำนวนเที่ยว", heave_angle: "มุมงัด", blade_spacing: "ระยะใบมีด", blade_width: "ความกว้างใบมีด", bulk_density: "ความหนาแน่น", moisture: "ความชื้น",
  worked_in: "ทำให้ลง", medium: "สิ่งที่ฉีด", hole_diameter: "ขนาดรู", trench_width: "กว้างร่อง", trench_spacing: "ระยะร่อง", seed: "เมล็ด", seed_kind: "ชนิดหญ้า", method: "วิธี",
  area: "พื้นที่", roller_mass: "น้ำหนักลูกกลิ้ง", vibrating: "แบบสั่น", clippings: "เศษหญ้า", brush: "แปรง", water: "น้ำ", by: "โดย", nitrogen: "ไนโตรเจน", phosphorus: "ฟอสฟอรัส",
  potassium: "โพแทสเซียม", iron: "เหล็ก", form: "รูปแบบ", substance: "สาร", rate: "อัตรา", against: "ใช้กับ", reason: "เหตุผล",

  frost: "น้ำค้างแข็ง", snow: "หิมะ", flood: "น้ำท่วม", works: "ก่อสร้าง", disease: "โรค", rest: "พักกรีน", other: "อื่น ๆ",
  inside: "ด้านใน", outside: "ด้านนอก", removed: "เก็บออก", before: "ก่อน", after: "หลัง", dry: "แห้ง", moist: "ชื้น", brushed: "แปรง", dragged: "ลาก", blown: "เป่า", watered: "รดน้ำ",
  left: "ทิ้งไว้", air: "ลม", broadcast: "หว่าน", slit: "หยอดร่อง", dimple: "หยอดหลุม", yes: "ใช่", no: "ไม่", collected: "เก็บ", soft: "อ่อน", stiff: "แข็ง",
  sprinklers: "หัวสปริงเกอร์", hand: "มือ", granules: "เม็ด", liquid: "น้ำ",
};
