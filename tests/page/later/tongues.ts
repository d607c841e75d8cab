// What shops print in sixteen languages that no other set of pages here speaks. Written from memory of such shops before
// the finder was asked; products and sentences are invented.

export type Tongue = {
  /** Words for the list. */
  heads: string[];
  /** Labels of what stands beside it: description, use, volume, maker, country, kept until. */
  beside: string[];
  titles: string[];
  says: string[];
  use: string;
  /** What is printed behind a list: storage, importer. */
  after: string[];
  buy: string;
  and: string;
};

const cut = (text: string) => text.split('|');
const tongue = (
  heads: string,
  beside: string,
  titles: string,
  says: string,
  use: string,
  after: string,
  buy: string,
  and: string,
): Tongue => ({
  heads: cut(heads),
  beside: cut(beside),
  titles: cut(titles),
  says: cut(says),
  use,
  after: cut(after),
  buy,
  and,
});

export const tongues: Record<string, Tongue> = {
  el: tongue(
    'Συστατικά|Σύνθεση|ΣΥΣΤΑΤΙΚΑ (INCI)|Όλα τα συστατικά',
    'Περιγραφή|Τρόπος χρήσης|Περιεχόμενο|Παραγωγός|Χώρα προέλευσης|Λήξη',
    'Σαμπουάν για σπαστά μαλλιά Αρμύρα|Κρέμα για μπούκλες Βότσαλο',
    'Μια ελαφριά κρέμα που αφήνει τις μπούκλες απαλές.|Για λεπτά και ξηρά μαλλιά.|Μυρίζει θυμάρι και θάλασσα.',
    'Απλώστε σε βρεγμένα μαλλιά και ξεπλύνετε με άφθονο νερό.',
    'Φυλάσσεται σε δροσερό μέρος.|Εισαγωγέας: Πέτρα ΑΕ, Αθήνα.',
    'Προσθήκη στο καλάθι',
    'και',
  ),
  uk: tongue(
    'Склад|Інгредієнти|Повний склад|Склад (INCI)',
    "Опис|Спосіб застосування|Об'єм|Виробник|Країна|Термін придатності",
    'Шампунь для кучерявого волосся Мушля|Крем для локонів Камінець',
    "Легкий крем для м'яких локонів.|Підходить для тонкого й сухого волосся.|Пахне сіном і дощем.",
    'Нанести на вологе волосся, за кілька хвилин змити водою.',
    'Зберігати в сухому місці.|Імпортер: ТОВ Берег, Львів.',
    'До кошика',
    'та',
  ),
  ru: tongue(
    'Состав|Ингредиенты|Полный состав|Состав продукта',
    'Описание|Способ применения|Объём|Производитель|Страна|Срок годности',
    'Бальзам для вьющихся волос Ракушка|Гель для локонов Прибой',
    'Лёгкий бальзам для мягких локонов.|Для тонких и сухих волос.|Пахнет сеном и дождём.',
    'Нанести на влажные волосы, через три минуты смыть водой.',
    'Хранить в сухом месте.|Импортёр: ООО Берег.',
    'В корзину',
    'и',
  ),
  bg: tongue(
    'Съставки|Състав|Пълен списък на съставките|Съдържание',
    'Описание|Начин на употреба|Количество|Производител|Страна|Годен до',
    'Шампоан за къдрава коса Мида|Крем за къдрици Вълна',
    'Лек крем за меки къдрици.|За фина и суха коса.|Ухае на сено и дъжд.',
    'Нанесете върху мократа коса и изплакнете обилно с вода.',
    'Да се съхранява на сухо.|Вносител: Бряг ЕООД, Варна.',
    'Добави в количката',
    'и',
  ),
  sr: tongue(
    'Састојци|Састав|Sastojci|Sastav proizvoda',
    'Опис|Начин употребе|Количина|Произвођач|Земља порекла|Рок употребе',
    'Шампон за коврџаву косу Шкољка|Крема за локне Талас',
    'Лагана крема за меке локне.|За танку и суву косу.',
    'Нанесите на мокру косу и исперите водом.',
    'Чувати на сувом месту.|Увозник: Обала доо, Београд.',
    'Додај у корпу',
    'и',
  ),
  hr: tongue(
    'Sastojci|Sastav|Popis sastojaka|Sastojci (INCI)',
    'Opis|Način uporabe|Količina|Proizvođač|Zemlja podrijetla|Rok trajanja',
    'Šampon za kovrčavu kosu Školjka|Krema za kovrče Val',
    'Lagana krema za mekane kovrče.|Za tanku i suhu kosu.|Miriše na sijeno i kišu.',
    'Nanesite na mokru kosu i isperite vodom.',
    'Čuvati na suhom mjestu.|Uvoznik: Obala d.o.o., Zadar.',
    'Dodaj u košaricu',
    'i',
  ),
  sk: tongue(
    'Zloženie|Ingrediencie|Zložky|Zloženie (INCI)',
    'Popis|Použitie|Objem|Výrobca|Krajina pôvodu|Spotrebujte do',
    'Šampón na kučeravé vlasy Mušľa|Krém na vlny Kamienok',
    'Ľahký krém pre mäkké kučery.|Pre jemné a suché vlasy.|Vonia senom a dažďom.',
    'Naneste na mokré vlasy a opláchnite vodou.',
    'Skladujte v suchu.|Dovozca: Breh s.r.o., Nitra.',
    'Do košíka',
    'a',
  ),
  sl: tongue(
    'Sestavine|Sestava|Seznam sestavin|Vse sestavine',
    'Opis|Uporaba|Vsebina|Proizvajalec|Država porekla|Uporabno do',
    'Šampon za kodraste lase Školjka|Krema za kodre Val',
    'Lahka krema za mehke kodre.|Za tanke in suhe lase.',
    'Nanesite na mokre lase in sperite z vodo.',
    'Hranite na suhem.|Uvoznik: Obala d.o.o., Koper.',
    'V košarico',
    'in',
  ),
  lt: tongue(
    'Sudėtis|Sudedamosios dalys|Ingredientai|Sudėtis (INCI)',
    'Aprašymas|Naudojimas|Talpa|Gamintojas|Kilmės šalis|Galioja iki',
    'Šampūnas garbanotiems plaukams Kriauklė|Kremas garbanoms Banga',
    'Lengvas kremas minkštoms garbanoms.|Ploniems ir sausiems plaukams.',
    'Tepkite ant drėgnų plaukų ir išskalaukite vandeniu.',
    'Laikyti sausoje vietoje.|Importuotojas: UAB Krantas, Klaipėda.',
    'Į krepšelį',
    'ir',
  ),
  lv: tongue(
    'Sastāvs|Sastāvdaļas|Pilns sastāvs|Sastāvs (INCI)',
    'Apraksts|Lietošana|Tilpums|Ražotājs|Izcelsmes valsts|Derīgs līdz',
    'Šampūns lokainiem matiem Gliemežvāks|Krēms lokām Vilnis',
    'Viegls krēms mīkstām lokām.|Plāniem un sausiem matiem.',
    'Uzklājiet uz mitriem matiem un izskalojiet ar ūdeni.',
    'Uzglabāt sausā vietā.|Importētājs: SIA Krasts, Liepāja.',
    'Pievienot grozam',
    'un',
  ),
  et: tongue(
    'Koostisosad|Koostis|Koostisained|Täielik koostis',
    'Kirjeldus|Kasutamine|Maht|Tootja|Päritoluriik|Parim enne',
    'Šampoon lokkis juustele Merikarp|Kreem lokkidele Laine',
    'Kerge kreem pehmetele lokkidele.|Õhukestele ja kuivadele juustele.',
    'Kanna niisketele juustele ja loputa veega.',
    'Hoida kuivas kohas.|Maaletooja: OÜ Rand, Pärnu.',
    'Lisa ostukorvi',
    'ja',
  ),
  ja: tongue(
    '全成分|成分|配合成分|全成分表示',
    '商品説明|使い方|内容量|製造元|原産国|使用期限',
    'うねり髪シャンプー 潮だまり|カールクリーム なぎさ',
    '軽やかで髪をやわらかく整えます。|細く乾いた髪に。|干し草と雨の香り。',
    '濡れた髪になじませ、水でよくすすいでください。',
    '湿気の少ない場所に保管してください。|輸入元：いそべ商会。',
    'カートに入れる',
    'と',
  ),
  ko: tongue(
    '전성분|성분|전 성분 표시|화장품법에 따라 기재해야 하는 모든 성분',
    '상품 설명|사용 방법|용량|제조사|제조국|사용 기한',
    '곱슬머리 샴푸 갯바위|컬 크림 물결',
    '가볍고 부드러운 컬 크림입니다.|가늘고 건조한 모발용.',
    '젖은 머리에 바른 뒤 물로 헹궈 주세요.',
    '건조한 곳에 보관하세요.|수입사: 바닷가상사.',
    '장바구니 담기',
    '및',
  ),
  ar: tongue(
    'المكونات|مكونات المنتج|التركيب|المكونات الكاملة',
    'الوصف|طريقة الاستخدام|الحجم|الشركة المصنعة|بلد المنشأ|تاريخ الانتهاء',
    'شامبو للشعر المجعد صدفة|كريم التجعيدات موجة',
    'كريم خفيف لتجعيدات ناعمة.|للشعر الرفيع والجاف.',
    'يوضع على الشعر المبلل ثم يشطف بالماء.',
    'يحفظ في مكان جاف.|المستورد: شركة الشاطئ.',
    'أضف إلى السلة',
    'و',
  ),
  vi: tongue(
    'Thành phần|Bảng thành phần|Thành phần đầy đủ|Thành phần sản phẩm',
    'Mô tả|Hướng dẫn sử dụng|Dung tích|Nhà sản xuất|Xuất xứ|Hạn sử dụng',
    'Dầu gội cho tóc xoăn Vỏ Sò|Kem dưỡng tóc xoăn Sóng',
    'Kem nhẹ giúp lọn tóc mềm mại.|Dành cho tóc mỏng và khô.',
    'Thoa lên tóc ướt rồi xả sạch với nước.',
    'Bảo quản nơi khô ráo.|Nhà nhập khẩu: Bờ Biển.',
    'Thêm vào giỏ hàng',
    'và',
  ),
  id: tongue(
    'Komposisi|Kandungan|Bahan-bahan|Komposisi lengkap',
    'Deskripsi|Cara pakai|Isi|Produsen|Negara asal|Kedaluwarsa',
    'Sampo rambut ikal Kerang|Krim ikal Ombak',
    'Krim ringan untuk ikal yang lembut.|Untuk rambut tipis dan kering.',
    'Oleskan pada rambut basah lalu bilas dengan air.',
    'Simpan di tempat kering.|Importir: PT Pantai.',
    'Tambah ke keranjang',
    'dan',
  ),
};
