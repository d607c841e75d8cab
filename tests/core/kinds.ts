/**
 * Titles of invented products with the kind that the noun for their form names (common practice), written before
 * the words of dictionary/kinds.json were tried on them: `title`, or `title @ breadcrumb`. Two kinds with `|`:
 * either is right.
 */
export const kindTitles: Record<string, string> = {
  cleanser: `Bond Fortifying Shampoo; Hydrating Shampoo with Oat Milk; Shampoo for Relaxed and Color-Treated Hair;
Protein Balance Shampoo 250 ml; Gentle Co-Wash; Coconut Cleansing Conditioner; Detangling Low-Poo; Scalp Care Shampoo
@ Hair > Scalp; Solid Shampoo Bar, Rosemary; Micellar Hair Cleanser; Cleansing Cream for Coils @ Curls; Shampoo Powder
@ Hair; Baby Shampoo, No Tears @ Baby > Bath; Purple Shampoo for Blondes; Leave it Clean Shampoo; Anti-Dandruff Shampoo;
Feuchtigkeitsshampoo mit Arganöl; Festes Shampoo für Locken; Haarseife Brennnessel @ Naturkosmetik; Kopfhaut-Shampoo
sensitiv; Waschcreme für Locken; Shampooing doux à l’huile d’amande; Shampoing solide cheveux bouclés; Crème lavante
boucles; Après-soleil shampooing réparateur; Champú reparador con keratina; Champú sólido de romero; Co-wash para rizos;
Shampoo hidratante com óleo de coco; Xampu em barra; Champô suave para cabelo encaracolado; Shampoo idratante ricci;
Shampoo solido alla lavanda; Milde shampoo voor krullen; Vaste shampoobar; Szampon nawilżający do loków; Delikatny
szampon z proteinami jedwabiu; Шампунь для вьющихся волос; Твёрдый шампунь с маслом арганы; Kıvırcık saçlar için şampuan;
Onarıcı Şampuan; 保湿シャンプー; アミノ酸シャンプー 詰め替え; 약산성 샴푸; 단백질 샴푸; 氨基酸洗发水; 滋养洗髮精; Schampo för
lockigt hår; Fast schampo; Hellävarainen shampoo kiharille; Šampon na kudrnaté vlasy; Sampon göndör hajra`,
  conditioner: `Everyday Conditioner; Protein Strength Conditioner for Fine Hair; Oil-Infused Conditioner; Lightweight
Detangling Conditioner @ Hair; Conditioner Bar, Cocoa; Bond Care Conditioner; Rinse-Out Conditioner; Refreshing Mint
Conditioner; Pflegespülung Kokos; Haarspülung für feines Haar; Conditioner für Locken, 300 ml; Après-shampooing nourrissant;
Après-shampoing solide; Baume démêlant à l’avoine @ Cheveux; Acondicionador hidratante con aceite de coco; Acondicionador
sólido; Condicionador para cachos; Amaciador suave; Balsamo nutriente capelli ricci; Balsamo solido; Conditioner voor
krullen; Crèmespoeling met amandel; Odżywka do włosów kręconych; Odżywka proteinowa; Бальзам для волос с пантенолом;
Кондиционер для кудрявых волос; Nemlendirici Saç Kremi; Bukleler için saç kremi; うるおいコンディショナー; ヘアコンディショナー しっとり;
수분 컨디셔너; 顺滑护发素; 柔順潤髮乳; Balsam för lockigt hår; Hårbalsam; Hoitoaine kiharille hiuksille; Kondicionér na vlasy`,
  'deep-conditioner': `Deep Conditioner; Moisture Mask for Coils; Overnight Hair Masque @ Hair; Deep Conditioning Treatment
@ Curls; Repair Mask; Shea Hair Mask with Oils; Intensive Hair Treatment @ Hair > Treatments; Haarmaske mit Sheabutter;
Haarkur für trockene Locken; Intensivkur Reparatur @ Haare; Masque nourrissant à l’huile d’avocat; Masque cheveux bouclés;
Soin profond cheveux secs; Mascarilla capilar nutritiva; Mascarilla para rizos; Máscara capilar reconstituinte; Máscara de
hidratação; Banho de creme nutritivo @ Cabelos; Maschera capelli nutriente; Maschera ricci; Haarmasker met aloë; Maska do
włosów kręconych; Maska emolientowa @ Włosy; Маска для волос увлажняющая; Saç Maskesi; Nemlendirici saç maskesi; ヘアマスク 集中補修;
ヘアトリートメント; 헤어 트리트먼트; 영양 헤어팩; 滋养发膜; 修護髮膜; Hårinpackning; Hårmask för lockar; Tehohoito kuiville hiuksille @ Hiukset;
Hiusnaamio; Maska na vlasy; Hajpakolás száraz hajra`,
  'protein-treatment': `Keratin Protein Treatment; Strengthening Protein Treatment @ Hair; Amino Reconstructor; Rice Protein
Treatment; Weekly Protein Hair Treatment; Proteinkur für strapaziertes Haar; Keratinkur; Soin protéiné fortifiant @ Cheveux;
Soin à la kératine @ Cheveux; Tratamiento de proteínas; Tratamiento de keratina sin formol @ Cabello; Tratamento de
proteína; Trattamento alle proteine @ Capelli; Eiwitbehandeling; Kuracja proteinowa; Протеиновый уход для волос; Protein bakımı
@ Saç; プロテイントリートメント; 단백질 트리트먼트; Proteinbehandling för hår`,
  'bond-treatment': `Bond Builder; Bond Repair Treatment; Salon Bond Multiplier, Step 1; Bond Concentrate @ Hair > Treatments;
Bond-Kur @ Haare; Soin des liaisons @ Cheveux; Tratamiento de enlaces @ Cabello; Bond Rebuilding Treatment for Coils`,
  'leave-in': `Leave-In Conditioner; Bond Leave-In; Moisture Leave-In Cream for Coils; Leave-In Milk; Detangling Spray @ Hair;
Heat Protection Spray; Curl Primer; Spray-In Conditioner; Leave-in Pflege für Locken; Haarmilch mit Hafer; Sprühkur;
Conditioner ohne Ausspülen; Soin sans rinçage boucles; Spray démêlant enfant @ Cheveux; Lait capillaire; Acondicionador sin
aclarado; Crema sin enjuague; Leave-in para cachos; Condicionador sem enxágue; Leite capilar @ Cabelos; Balsamo senza
risciacquo; Latte capelli; Leave-in conditioner voor krullen; Crème zonder uitspoelen @ Haar; Odżywka bez spłukiwania;
Mleczko do włosów; Несмываемый кондиционер; Несмываемый крем для кудрей; Durulanmayan saç kremi; 洗い流さないトリートメント;
ヘアミルク; 노워시 트리트먼트; 리브인 컨디셔너; 免洗护发素; Leave-in balsam; Jätettävä hoitoaine kiharille; Bezoplachový kondicionér`,
  cream: `Curl Defining Cream; Twisting Butter @ Hair; Styling Cream for Waves; Curl Butter; Hair Pudding; Coil Custard; Bond
Curl Cream; Protein-Rich Curl Cream; Defining Cream @ Curls > Styling; Lockencreme; Stylingcreme für Locken; Haarcreme;
Crème définition boucles; Crème coiffante; Crema definidora de rizos; Crema de peinado; Creme de pentear; Creme modelador de
cachos; Crema ricci definiti; Crema modellante capelli; Krullencrème; Krem do loków; Krem do stylizacji włosów; Крем для
кудрей; Крем для укладки; Bukle kremi; カールクリーム; スタイリングクリーム; 컬 크림; 卷发弹力素; Lockcreme för hår; Muotoiluvoide kiharille;
Krém na kudrny @ Vlasy`,
  gel: `Curl Gel; Flaxseed Gel @ Hair; Strong Hold Styling Gel; Curl Jelly; Edge Control; Protein-Free Hold Gel; Haargel; Lockengel;
Gel coiffant; Gel boucles tenue forte; Gel fijador para rizos; Gelatina para rizos; Gel para cachos; Gelatina para cachos; Gel
ricci; Gel modellante capelli; Krullengel; Żel do włosów; Żel lniany do loków; Гель для укладки волос; Saç jölesi; ヘアジェル; 헤어 젤; 发用啫喱;
Hårgel; Hiusgeeli; Gel na vlasy`,
  foam: `Curl Foam; Volume Mousse @ Hair; Styling Foam; Protein Mousse @ Hair; Schaumfestiger; Lockenschaum; Mousse coiffante; Mousse
boucles; Espuma para rizos; Espuma modeladora para cachos; Mousse ricci; Schiuma ricci; Krullenmousse; Haarschuim; Pianka do
loków; Пенка для укладки волос; Мусс для волос; Saç köpüğü; カールムース; 헤어 무스; 造型摩丝; Hårmousse; Hiusvaahto; Pěna na vlasy`,
  serum: `Smoothing Hair Serum; Split End Serum @ Hair; Anti-Frizz Serum; Haarserum; Spitzenfluid @ Haare; Sérum capillaire; Sérum
anti-frisottis @ Cheveux; Sérum para puntas; Sérum capilar; Sérum para pontas @ Cabelos; Siero capelli; Haarserum voor de punten;
Serum do końcówek; Сыворотка для кончиков волос; Saç Serumu; ヘアセラム; 헤어 세럼; 护发精华; Hårserum; Hiusseerumi; Sérum na vlasy`,
  oil: `Argan Hair Oil; Finishing Oil @ Hair; Curl Oil; Dry Oil for Hair; Bond Oil @ Hair; Haaröl; Arganöl für die Haarspitzen; Huile
capillaire; Huile cheveux secs; Aceite capilar; Aceite para rizos; Óleo capilar; Óleo reparador de pontas @ Cabelos; Olio capelli;
Olio per capelli ricci; Haarolie; Olejek do włosów; Масло для волос; Saç Yağı; ヘアオイル; 헤어 오일; 护发油; Hårolja; Hiusöljy; Olej na vlasy`,
  hairspray: `Hairspray, Flexible Hold; Hair Spray Extra Strong; Finishing Spray, Strong Hold @ Hair; Haarspray; Haarlack; Laque
fixation forte @ Cheveux; Laca para el cabello; Laca extra fuerte @ Cabello; Lacca per capelli; Haarlak; Lakier do włosów; Лак для
волос сильной фиксации; Saç Spreyi; ヘアスプレー ハード; 헤어스프레이; 定型喷雾 头发; Hårspray; Hiuslakka; Lak na vlasy`,
  'refresh-spray': `Curl Refresh Spray; Second-Day Curl Mist; Day Three Refresher for Waves; Wave Reviving Mist; Locken-Auffrischspray;
Auffrischungsspray für Locken; Spray rafraîchissant boucles; Brume réveil boucles; Spray refrescante de rizos; Spray
reactivador de rizos; Spray reativador de cachos; Spray revitalizante de cachos; Spray ravviva ricci; Krullen opfrisspray; Spray
odświeżający loki; Спрей для обновления кудрей; Bukle canlandırıcı sprey; 寝ぐせ直しウォーター; 컬 리프레시 미스트; 卷发唤醒喷雾; Uppfriskande
lockspray; Virkistävä kiharasuihke; Osvěžující sprej na kudrny`,
  rinse: `Apple Cider Vinegar Rinse @ Hair; Herbal Hair Rinse; Shine Rinse @ Hair; Rice Water Rinse; Saure Rinse @ Haare; Haaressig
Himbeere; Vinaigre de rinçage capillaire; Eau de rinçage aux herbes @ Cheveux; Vinagre para el cabello; Vinagre capilar; Aceto per
capelli; Haarazijn; Płukanka octowa do włosów; Płukanka ziołowa; Ополаскиватель для волос; Saç sirkesi; 헤어 식초; Hiushuuhde; Ocet na vlasy`,
  'scalp-treatment': `Scalp Serum; Soothing Scalp Treatment; Scalp Scrub with Sea Salt; Exfoliating Scalp Mask; Scalp Drops @ Hair;
Scalp Tonic; Hair Growth Serum for Scalp; Kopfhautserum; Kopfhautpeeling; Haarwasser Birke; Sérum cuir chevelu; Gommage cuir
chevelu; Lotion anti-chute @ Cheveux; Tónico para el cuero cabelludo; Exfoliante para cuero cabelludo; Tônico capilar
antiqueda; Esfoliante para couro cabeludo; Siero per il cuoio capelluto; Scrub cuoio capelluto; Hoofdhuidserum; Hoofdhuidscrub;
Wcierka do włosów; Peeling do skóry głowy; Тоник для кожи головы; Пилинг для кожи головы; Saç derisi toniği; 頭皮エッセンス;
スカルプトニック; 두피 토닉; 두피 스케일링 팩; 头皮精华液; 头皮磨砂膏; Hårbottenserum; Hiuspohjan kuorinta; Sérum na pokožku hlavy`,
  'pre-wash': `Pre-Wash Oil; Pre-Poo Treatment; Pre-Shampoo Mask; Hot Oil Treatment; Pre-Shampoo-Kur @ Haare; Vorwäsche-Öl für Locken;
Soin avant-shampooing @ Cheveux; Huile avant-shampooing; Tratamiento prelavado @ Cabello; Mascarilla pre-champú; Tratamento
pré-lavagem @ Cabelos; Olio pre-shampoo; Olej przed myciem włosów; Масло до мытья волос; プレシャンプー オイル; 샴푸 전 헤어 오일; 洗前护发油;
Ennen pesua käytettävä öljy @ Hiukset`,
  'dry-shampoo': `Dry Shampoo; Volumising Dry Shampoo Foam; Trockenshampoo für dunkles Haar; Shampooing sec; Champú en seco; Shampoo a
seco; Shampoo secco; Droogshampoo; Suchy szampon; Сухой шампунь; Kuru şampuan; ドライシャンプー; 드라이 샴푸; 干发喷雾; Torrschampo; Kuivashampoo;
Suchý šampon`,
  'not-hair': `Body Butter; Hand Cream with Shea; Shower Gel; Face Serum; Dog Shampoo; Beard Oil; Lash Serum; Cuticle Oil @ Nails; Hair
Colour Cream; Permanent Hair Dye; Bleach Powder; Hair Relaxer; Hair Vitamins Capsules; Perm Lotion; Car Shampoo; Bath Foam; Body Oil
@ Hair & body; Night Cream @ Skincare; Baby Lotion @ Baby; Deodorant Cream; Gesichtscreme; Körperöl; Duschgel Limette;
Hundeshampoo; Haarfarbe Kastanie; Blondierung; Bartöl; Gel douche; Crème mains; Huile pour le corps; Shampooing pour chien;
Coloration permanente; Crema facial; Aceite corporal; Gel de baño; Champú para perros; Tinte para el cabello; Creme para as mãos;
Óleo corporal; Tinta para cabelo; Sabonete líquido @ Corpo; Crema viso; Olio corpo; Bagnoschiuma; Tinta per capelli; Douchegel;
Bodylotion; Haarverf; Krem do twarzy; Żel pod prysznic; Farba do włosów; Szampon dla psów; Крем для рук; Гель для душа; Краска для
волос; Шампунь для собак; Duş jeli; El kremi; Saç boyası; ボディオイル; ハンドクリーム; ヘアカラー 白髪染め; 犬用シャンプー; 바디로션; 핸드크림; 염색약;
강아지 샴푸; 沐浴露; 护手霜; 染发膏; Duschkräm; Handkräm; Hårfärg; Hundschampo; Suihkugeeli; Käsivoide; Hiusväri; Sprchový gel; Barva na vlasy`,
  accessory: `Wide-Tooth Comb; Detangling Brush; Satin Bonnet; Microfibre Hair Towel; Diffuser Attachment; Shampoo Scalp Brush; Curl
Clips; Silk Pillowcase; Spray Bottle for Curls; Entwirrbürste; Satinhaube; Haartrockner mit Diffusor; Mikrofaser-Handtuch; Peigne
à cheveux; Brosse démêlante; Bonnet en satin; Cepillo desenredante; Gorro de satén; Peine de madera; Escova desembaraçante; Touca
de cetim; Pente de madeira; Spazzola districante; Cuffia in raso; Ontwarborstel; Slaapmuts satijn; Szczotka do włosów; Czepek
satynowy; Расческа для волос; Saç fırçası; ヘアブラシ; ナイトキャップ; 헤어 브러시; 梳子; Hårborste; Hiusharja; Kartáč na vlasy`,
  kit: `Curl Care Gift Set; Shampoo & Conditioner Set; Shampoo and Conditioner; Travel Kit for Waves; Curl Routine Bundle; Discovery Set
@ Hair; Haarpflege-Geschenkset; Pflegeset für Locken; Coffret boucles; Duo shampooing et après-shampooing; Pack champú +
acondicionador; Kit shampoo e condicionador; Kit capelli ricci; Giftset krullen; Zestaw do loków; Набор для кудрявых волос; シャンプー＆トリートメント
セット; 샴푸 린스 세트; 洗护套装; Presentset hår; Lahjapakkaus hiuksille`,
};

/** Tricky ones, `kind|title @ breadcrumb|other kind that is right too`, a second hundred written after the first were right. */
export const trickyTitles = `cleanser|Curl Cleanser with Aloe
cleanser|Cleansing Conditioner, Fig
cleanser|Foaming Hair Wash @ Hair
cleanser|Apple Cider Vinegar Shampoo
cleanser|Oil Control Shampoo
cleanser|Scalp Detox Shampoo @ Scalp
cleanser|2in1 Shampoo & Conditioner Kids
cleanser|Pre-Color Chelating Shampoo
cleanser|Rhassoul Hair Wash Powder
cleanser|Shampoo & Dusche 2in1 Minze @ Haare
cleanser|Leave-In-freundliches Shampoo für Locken
cleanser|Shampooing crème réparateur
cleanser|Shampoing anti-chute fortifiant
cleanser|Champú anticaída con romero
cleanser|Shampoo antiforfora
cleanser|Szampon oczyszczający z peelingiem
cleanser|Anti-roos shampoo
cleanser|Dökülme karşıtı şampuan
cleanser|スカルプシャンプー
cleanser|クレンジングコンディショナー @ ヘア
cleanser|두피 샴푸 탈모 완화
cleanser|去屑洗发水
cleanser|Mjällschampo
conditioner|Volume Conditioner, Fine Hair, 1 L Refill
conditioner|Conditioner Concentrate
conditioner|Moisture Milk Conditioner
conditioner|Detangling Conditioner Kids @ Baby & Kids > Hair
conditioner|Farbschutz Spülung
conditioner|Après-shampooing sans silicone
conditioner|Acondicionador en barra
conditioner|Balsamo capelli secchi senza siliconi
conditioner|Odżywka emolientowa
conditioner|Бальзам-ополаскиватель для волос|rinse
conditioner|ダメージケア コンディショナー 本体
conditioner|Ekstra Kremet Balsam for hår
deep-conditioner|Moisture Pack Treatment Mask
deep-conditioner|Weekly Repair Treatment @ Hair > Treatments
deep-conditioner|Mask Stick for Hair
deep-conditioner|Bond Repair Mask
deep-conditioner|Avocado Butter Hair Mask
deep-conditioner|Clay Hair Mask
deep-conditioner|1-Minuten-Kur @ Haare
deep-conditioner|Haarmaske 3-in-1
deep-conditioner|Masque capillaire solide
deep-conditioner|Mascarilla sin enjuague|leave-in
deep-conditioner|Máscara 2 em 1 @ Cabelos
deep-conditioner|Maschera ristrutturante
deep-conditioner|Маска-кондиционер для волос|conditioner
deep-conditioner|집중 케어 헤어 마스크
leave-in|Leave-In Detangler
leave-in|Thermal Protect Mist @ Hair|refresh-spray
leave-in|Curl Smoothing Milk
leave-in|Everyday Leave-On Conditioner
leave-in|Multi-Benefit Hair Spray Leave-In
leave-in|Blow-Dry Primer Spray @ Hair
leave-in|Hitzeschutz-Spray für Locken
leave-in|Spray 10 en 1 sans rinçage
leave-in|Crema de peinar sin enjuague
leave-in|Protector térmico en spray @ Cabello
leave-in|Protetor térmico @ Cabelo
leave-in|Spray termoprotettore capelli
leave-in|Spray do rozczesywania włosów
leave-in|Спрей-термозащита для волос
leave-in|ヘアミスト 熱ダメージ|refresh-spray
cream|Curl Activator Cream
cream|Hair Wax Matte @ Men
cream|Moisturizing Hair Lotion
cream|Styling Paste @ Hair
cream|Anti-Frizz Cream @ Hair
cream|Crème de coiffage boucles
cream|Haarwachs
cream|Crema anticrespo @ Capelli
cream|Pasta do włosów
cream|ヘアワックス
gel|Aloe Gel for Curls
gel|Water-Based Gel, Firm Hold @ Curls
gel|Definition Gelée boucles
gel|Gel de linaza para el cabello
foam|Wrap Foam @ Curls
foam|Root Lift Mousse
foam|Protein-Schaum für Locken
serum|Heat Styling Serum @ Hair
serum|Shine Drops @ Hair
serum|Haar-Elixier Glanz
serum|Keratin Hair Serum
oil|Rosemary & Mint Hair Oil
oil|Leave-In Oil @ Hair
oil|Jojoba Oil, Cold Pressed @ Hair > Oils
oil|Haarspitzenöl
oil|Rizinusöl für Haare
hairspray|Sea Salt Spray @ Hair
hairspray|Texturising Spray @ Hair
hairspray|Spray fixant boucles
refresh-spray|Overnight Curl Refresh Mist
refresh-spray|Curl Awakening Spray
refresh-spray|Moisture Mist for Curls
rinse|Apple Vinegar Hair Rinse
rinse|Lamellar Water @ Hair
rinse|Chamomile Rinse for Blondes @ Hair
rinse|Spülung mit Apfelessig, sauer @ Haare|conditioner
scalp-treatment|Scalp Balancing Lotion
scalp-treatment|Rosemary Scalp Drops
scalp-treatment|Scalp Mist
scalp-treatment|Ampollas anticaída @ Cabello
scalp-treatment|Fiale anticaduta @ Capelli
scalp-treatment|Haartonikum Koffein
pre-wash|Pre-Shampoo Treatment Oil
pre-wash|Oil Treatment, Pre-Wash
pre-wash|Avant-shampooing huile de coco
dry-shampoo|Dry Shampoo Paste
dry-shampoo|Non-Aerosol Dry Shampoo Powder
not-hair|Body Scrub
not-hair|Foaming Hand Wash
not-hair|Lip Balm Honey
not-hair|Cat Shampoo
not-hair|Baby Wash @ Baby
not-hair|Hair Gummies
not-hair|Semi-Permanent Hair Color, Plum
not-hair|Eyebrow Gel
not-hair|Massage Oil @ Body
not-hair|Cleansing Foam @ Skincare
not-hair|Straightening Cream Relaxer
not-hair|Leather Conditioner
not-hair|Fabric Conditioner, Lavender
not-hair|Beard Balm
not-hair|Face Mask
not-hair|Feuchtigkeitsmaske Gesicht
not-hair|Bademilch
not-hair|Masque visage argile
not-hair|Gel intime
not-hair|Pâte dentifrice
not-hair|Crema de manos
not-hair|Mascarilla facial
not-hair|Espuma de afeitar
not-hair|Máscara de cílios
not-hair|Balsamo labbra
not-hair|Crema solare
not-hair|Maska do twarzy
not-hair|Balsam do ciała
not-hair|Маска для лица
not-hair|Пена для бритья
not-hair|洗顔フォーム
not-hair|フェイスマスク
not-hair|페이스 마스크
not-hair|面膜
not-hair|Ansiktsmask
accessory|Curl Comb
accessory|Silk Scrunchie Trio
accessory|Hair Dryer 2000 W
accessory|Bristle Brush for Beard|not-hair
accessory|Shower Cap
accessory|Heat Protection Gloves
accessory|Haargummis, 3 Stück
accessory|Lockenwickler
accessory|Sèche-cheveux
accessory|Secador de pelo
accessory|Asciugacapelli
accessory|Suszarka do włosów
accessory|Фен для волос
accessory|헤어 드라이기
kit|Three-Step Curl System Set
kit|Mini Set Shampoo, Mask, Gel
kit|Geschenkbox Haarpflege
kit|Coffret shampooing + masque
kit|Set regalo rizos
kit|Kit cronograma capilar
kit|Cofanetto capelli
kit|Zestaw prezentowy szampon i odżywka
kit|ギフトセット ヘアケア
kit|Shampoo + Conditioner Bundle
unknown|Lowtide No. 4
unknown|Rich Cream`;
