// What shops in many languages print around a list: headings, buttons and talk, from memory, written before
// `dictionary/finding/` was looked at again.
export type Tongue = {
  heads: string[];
  about: string;
  use: string;
  how: string;
  says: string[];
  goods: string[];
  buy: string;
  note: string;
  and: string;
};

const tongue = (
  heads: string,
  [about, use, buy, and]: [string, string, string, string],
  how: string,
  says: string,
  goods: string,
  note: string,
): Tongue => ({
  heads: heads.split('|'),
  about,
  use,
  buy,
  and,
  how,
  says: says.split('|'),
  goods: goods.split('|'),
  note,
});

export const tongues: Record<string, Tongue> = {
  en: tongue(
    'Ingredients|Full Ingredient List|What’s Inside|Ingredients (INCI)',
    ['The story', 'How to use', 'Add to bag', 'and'],
    'Smooth over damp lengths, leave for five minutes and rinse.',
    'Soft hold for loose coils.|Poured by hand in our harbour workshop.|Smells of rain and cut grass.',
    'Rinse|Curl Jelly|Wave Milk|Scalp Wash|Hair Butter',
    'Formulas change now and then, so trust the bottle.',
  ),
  th: tongue(
    'ส่วนประกอบ|ส่วนผสม|ส่วนผสมทั้งหมด',
    ['รายละเอียดสินค้า', 'วิธีใช้', 'หยิบใส่ตะกร้า', 'และ'],
    'ชโลมลงบนผมเปียก ทิ้งไว้ห้านาทีแล้วล้างออก',
    'จัดลอนนุ่มไม่แข็ง|ผลิตทีละน้อยด้วยมือ|กลิ่นสะอาดเหมือนฝน',
    'แชมพู|ครีมนวดผม|เจลจัดลอน',
    'เก็บให้พ้นมือเด็ก',
  ),
  vi: tongue(
    'Thành phần|Bảng thành phần|Thành phần đầy đủ|Thành phần chi tiết',
    ['Mô tả sản phẩm', 'Hướng dẫn sử dụng', 'Thêm vào giỏ', 'và'],
    'Thoa đều lên tóc ướt, để năm phút rồi xả sạch.',
    'Giữ nếp xoăn mềm mại.|Làm thủ công từng mẻ nhỏ.|Mùi hương của mưa.',
    'Dầu gội|Dầu xả|Kem tạo kiểu',
    'Để xa tầm tay trẻ em.',
  ),
  id: tongue(
    'Komposisi|Kandungan|Bahan-bahan|Komposisi Lengkap',
    ['Deskripsi', 'Cara pakai', 'Masukkan keranjang', 'dan'],
    'Ratakan pada rambut basah, diamkan lima menit lalu bilas.',
    'Ikal lembut tanpa kaku.|Dibuat sedikit demi sedikit.|Harum seperti hujan.',
    'Sampo|Kondisioner|Krim Ikal',
    'Jauhkan dari jangkauan anak.',
  ),
  el: tongue(
    'Συστατικά|Σύνθεση|Συστατικά (INCI)|Πλήρης λίστα συστατικών',
    ['Περιγραφή', 'Τρόπος χρήσης', 'Προσθήκη στο καλάθι', 'και'],
    'Απλώστε σε βρεγμένα μαλλιά, αφήστε πέντε λεπτά και ξεπλύνετε.',
    'Απαλές μπούκλες χωρίς βάρος.|Φτιάχνεται σε μικρές παρτίδες.|Μυρίζει βροχή.',
    'Σαμπουάν|Μαλακτική|Κρέμα για μπούκλες',
    'Μακριά από παιδιά.',
  ),
  ar: tongue(
    'المكونات|مكونات المنتج|المكونات الكاملة',
    ['الوصف', 'طريقة الاستخدام', 'أضف إلى السلة', 'و'],
    'يوزع على الشعر المبلل ويترك خمس دقائق ثم يشطف.',
    'تموجات ناعمة بلا ثقل.|يصنع بكميات صغيرة.|رائحة المطر.',
    'شامبو|بلسم|كريم للشعر المجعد',
    'يحفظ بعيدا عن متناول الأطفال.',
  ),
  he: tongue(
    'רכיבים|מרכיבים|רשימת רכיבים|רכיבי המוצר',
    ['תיאור', 'אופן השימוש', 'הוספה לסל', 'ו'],
    'למרוח על שיער רטוב, להמתין חמש דקות ולשטוף.',
    'תלתלים רכים בלי משקל.|מיוצר בכמויות קטנות.|ריח של גשם.',
    'שמפו|מרכך|קרם תלתלים',
    'להרחיק מילדים.',
  ),
  hi: tongue(
    'सामग्री|संघटक|मुख्य सामग्री सूची|घटक',
    ['विवरण', 'उपयोग का तरीका', 'कार्ट में डालें', 'और'],
    'गीले बालों पर लगाएं, पाँच मिनट रखें और धो लें।',
    'मुलायम लहरें, बिना भारीपन के।|छोटे बैच में हाथ से बना।|बारिश जैसी खुशबू।',
    'शैम्पू|कंडीशनर|कर्ल क्रीम',
    'बच्चों की पहुँच से दूर रखें।',
  ),
  uk: tongue(
    'Склад|Інгредієнти|Повний склад|Склад продукту',
    ['Опис', 'Спосіб застосування', 'До кошика', 'та'],
    'Нанесіть на вологе волосся, залиште на п’ять хвилин і змийте.',
    'М’які хвилі без ваги.|Варимо малими партіями.|Пахне дощем.',
    'Шампунь|Кондиціонер|Крем для кучерів',
    'Берегти від дітей.',
  ),
  nb: tongue(
    'Ingredienser|Innhold|Ingrediensliste|Innholdsstoffer',
    ['Om produktet', 'Slik bruker du det', 'Legg i handlekurv', 'og'],
    'Fordel i vått hår, la det virke i fem minutter og skyll.',
    'Myke krøller uten tyngde.|Rørt for hånd i små partier.|Lukter av regn.',
    'Sjampo|Balsam|Krøllkrem',
    'Oppbevares utilgjengelig for barn.',
  ),
  fi: tongue(
    'Ainesosat|Koostumus|Ainesosaluettelo|Sisältö',
    ['Tuotekuvaus', 'Käyttö', 'Lisää koriin', 'ja'],
    'Levitä märkiin hiuksiin, anna vaikuttaa viisi minuuttia ja huuhtele.',
    'Pehmeät laineet ilman painoa.|Valmistettu pienissä erissä.|Tuoksuu sateelta.',
    'Hoitoaine|Sampoo|Kiharavoide',
    'Säilytä lasten ulottumattomissa.',
  ),
  lt: tongue(
    'Sudėtis|Sudedamosios dalys|Ingredientai|Pilna sudėtis',
    ['Aprašymas', 'Naudojimas', 'Į krepšelį', 'ir'],
    'Paskirstykite drėgnuose plaukuose, palaikykite penkias minutes ir išskalaukite.',
    'Minkštos bangos be svorio.|Gaminama mažomis partijomis.|Kvepia lietumi.',
    'Šampūnas|Kondicionierius|Garbanų kremas',
    'Laikyti vaikams nepasiekiamoje vietoje.',
  ),
  lv: tongue(
    'Sastāvs|Sastāvdaļas|Pilns sastāvs',
    ['Apraksts', 'Lietošana', 'Ielikt grozā', 'un'],
    'Iestrādāt mitros matos, atstāt piecas minūtes un izskalot.',
    'Maigi viļņi bez svara.|Gatavots mazās partijās.|Smaržo pēc lietus.',
    'Šampūns|Kondicionieris|Krēms cirtām',
    'Sargāt no bērniem.',
  ),
  et: tongue(
    'Koostisosad|Koostis|Koostisained',
    ['Kirjeldus', 'Kasutamine', 'Lisa korvi', 'ja'],
    'Kanna märgadele juustele, oota viis minutit ja loputa.',
    'Pehmed lained ilma raskuseta.|Valmib väikestes kogustes.|Lõhnab vihma järele.',
    'Šampoon|Palsam|Lokikreem',
    'Hoida lastele kättesaamatus kohas.',
  ),
  hr: tongue(
    'Sastojci|Sastav|Popis sastojaka|INCI sastav',
    ['Opis', 'Način uporabe', 'Dodaj u košaricu', 'i'],
    'Nanesite na mokru kosu, ostavite pet minuta i isperite.',
    'Meki valovi bez težine.|Radimo u malim serijama.|Miriše na kišu.',
    'Šampon|Regenerator|Krema za kovrče',
    'Čuvati izvan dohvata djece.',
  ),
  hu: tongue(
    'Összetevők|Összetétel|Teljes összetevőlista|Hatóanyagok és összetevők',
    ['Leírás', 'Használat', 'Kosárba', 'és'],
    'Vizes hajba dolgozzuk, öt percig hagyjuk hatni, majd kiöblítjük.',
    'Puha hullámok súly nélkül.|Kis adagokban készül.|Esőillatú.',
    'Sampon|Balzsam|Göndörítő krém',
    'Gyermekektől elzárva tartandó.',
  ),
  nl: tongue(
    'Ingrediënten|Benodigdheden|Samenstelling|Wat zit erin?',
    ['Over dit product', 'Gebruik', 'In mijn mandje', 'en'],
    'Verdeel over nat haar, wacht vijf minuten en spoel uit.',
    'Zachte slagen zonder gewicht.|In kleine oplage gemaakt.|Ruikt naar regen.',
    'Shampoo|Crèmespoeling|Krullenmelk',
    'Buiten bereik van kinderen houden.',
  ),
  ja: tongue(
    '全成分|成分|材料|原材料',
    ['商品説明', '使い方', 'カートに入れる', 'と'],
    '濡れた髪になじませ、五分おいて洗い流します。',
    'やわらかなくせ毛に。|小さな工房で手作り。|雨の香り。',
    'シャンプー|トリートメント|ヘアミルク',
    '子どもの手の届かない所に置いてください。',
  ),
  es: tongue(
    'Ingredientes|Composición|Lista de ingredientes|¿Qué lleva?',
    ['La historia', 'Modo de empleo', 'Añadir a la cesta', 'y'],
    'Repartir por el pelo mojado, dejar cinco minutos y aclarar.',
    'Ondas suaves sin peso.|Hecho a mano en el puerto.|Huele a lluvia.',
    'Champú|Acondicionador|Crema de rizos',
    'Mantener fuera del alcance de los niños.',
  ),
  de: tongue(
    'Inhaltsstoffe|INCI|Zusammensetzung|Was ist drin?',
    ['Worum es geht', 'Anwendung', 'In den Korb', 'und'],
    'In nasse Längen streichen, fünf Minuten warten, ausspülen.',
    'Weiche Wellen ohne Gewicht.|In kleinen Mengen gerührt.|Riecht nach Regen.',
    'Haarseife|Spülung|Lockenmilch',
    'Für Kinder unerreichbar aufbewahren.',
  ),
};
