// Strings that stand where names stand and are none. Written by hand for this test; invented throughout.
// One in a hundred may be found (asserted in lookup-never-found.test.ts).

const lines = (text: string) => text.trim().split('\n');

const prose = lines(`
Apply generously to wet hair from roots to ends
Work through with your fingers and leave for five minutes
Rinse thoroughly with lukewarm water
Follow with your favourite conditioner
Use two or three times a week
Massage gently into the scalp
Leave on overnight for a deeper effect
Comb through section by section
Scrunch out the crunch once dry
Shake well before each use
Start with a pea-sized amount
Do not rinse out
Best results on freshly washed hair
Suitable for everyday use
For external use only
Keep out of reach of children
Avoid contact with eyes
If contact occurs rinse with plenty of water
Discontinue use if irritation develops
Do not use on broken skin
Store in a cool dry place
Close the lid after use
Patch test before first use
Not tested on animals
Made with love in small batches
Hair feels soft and looks shiny
Leaves no residue behind
Your curls will thank you
The scent reminds us of a walk in the woods
We started in a kitchen with one pot
Our chemist mixed forty versions before this one
She swears by it every summer
It smells like rain on warm stones
This bottle lasts about three months
You only need a little
Ends feel less dry after one wash
My daughter loves the smell
I bought it twice already
The pump broke after a week
Would not buy again
Texture is thick but rinses clean
Wait until it is dry before styling
Diffuse on low heat
Sleep on a silk pillowcase
Drink enough water
Trim your ends every eight weeks
Water is the first thing on every label
Oil and water do not mix
A protein is a long chain of amino acids
Keratin is what hair is made of
What does glycerin do
Why is there alcohol in my conditioner
How much protein is too much
Silk is spun by a caterpillar
Wheat grows in the field
Milk belongs in the fridge
Eggs are sold by the dozen
Honey never spoils
Rice is boiled for twelve minutes
Read the list before you buy
This page was last updated in spring
Learn more about our promise
See the box for the full list
Scroll down for details
Ask your stylist
Consult a doctor if in doubt
Results may vary from person to person
Based on a test with thirty volunteers
After four weeks of daily use
Compared with untreated hair
Measured with an instrument in our laboratory
Nine out of ten said they would use it again
Contains no surprises
No parabens and no drama
It contains nothing you cannot pronounce
Rich in vitamins and minerals
Packed with plant goodness
Powered by nature
Full of antioxidants
A blend of seven precious oils
With oils from four continents
Infused with botanical extracts
Enriched with a special protein
Our secret is in the ferment
Born from the sea
Straight from the garden
Harvested by hand at dawn
Pressed within a day
Filtered three times
Fermented for a month in oak
Grown without chemicals
Inspired by an old recipe
The recipe has not changed since
Each batch is numbered
Bottled where it is made
Refill it and save
Return the empty jar
Ships in two days
Free delivery over forty
Add to basket
Only three left in stock
Sold out for now
Notify me when available
Write a review
Was this helpful
Sort by newest
Filter by hair type
`);

const legal = lines(`
All rights reserved
Subject to change without notice
The printed label prevails
Ingredients may change over time
Ingredient lists are updated regularly
Please refer to the packaging for the current list
We do not accept liability for errors or omissions
The manufacturer is responsible for the accuracy of the list
This product has not been evaluated by any authority
Not intended to diagnose or treat any disease
Dispose of contents in accordance with local regulations
Flammable until dry
Danger: extremely flammable aerosol
Pressurised container: may burst if heated
Do not pierce or burn even after use
Protect from sunlight
Do not expose to temperatures exceeding fifty degrees
Keep away from heat and open flames
Use only in well ventilated areas
Deliberate misuse can be harmful
May cause an allergic reaction
Hair colourants can cause severe allergic reactions
Read and follow instructions
Not for use by persons under sixteen
Wear suitable gloves
Rinse eyes immediately if product comes into contact with them
Distributed by the company named below
Manufactured under licence
Best before end see base
Period after opening twelve months
Batch number on the bottom
Registered design
Patent pending
Recycle where facilities exist
Country of origin stated on pack
Customer care line open on weekdays
Terms and conditions apply
Cookies help us run this shop
By continuing you accept our policy
Prices include tax
Postage is calculated at checkout
Returns within thirty days
Images are for illustration
Colours may differ on screen
Statement required by law
In accordance with the regulation
Article nineteen applies
Notified before placing on the market
Responsible person
Imported for sale in the union
`);

const marketing = lines(`
Moisture Surge Complex
Curl Revival Technology
Repair and Protect System
Bond Renewal Formula
Silk Finish
Velvet Touch
Liquid Shine
Hydration Boost
Deep Repair Therapy
Frizz Defense Shield
Color Lock System
Strength and Length
Bounce Back Blend
Botanical Infusion Complex
Tropical Oil Fusion
Seven Oil Miracle
Root Awakening Blend
Scalp Comfort Ritual
Volume without Weight
Weightless Moisture
Protein Power
Protein Packed Treatment
Keratin Smoothing Treatment
Keratin Infusion System
Collagen Boost Treatment
Milk Bath Ritual
Silk Press Ready
Rice Water Ritual Set
Honey Glow Finish
Egg Mask Night
Oat Comfort Line
Plant Protein Promise
Vegan Keratin Alternative
Pro Repair Complex
Hyper Hydrating Blend
Ultra Nourishing Elixir
Intense Recovery
Daily Defense
Night Repair
Morning Dew Mist
Island Breeze
Midnight Garden
Summer Rain
Golden Hour
Cloud Nine
Wild Meadow
Ocean Drift
Sunday Ritual
Curl Cushion
Coil Crown
Wave Maker
Twist and Define
Define and Hold
Hold All Day
Humidity Proof
Heat Guard
Slip and Detangle
Slip Agent
Wash Day Hero
Second Day Saviour
Edge Tamer
Braid and Loc Care
Clean and Conscious
Kind to Scalp
Good for You
Dermatologist Approved
Salon Quality
Award Winning Formula
Best Seller
New and Improved
Limited Edition
Travel Size
Family Size
Starter Kit
Gift Set
Bundle and Save
Cruelty Free
Sulfate Free
Silicone Free
Paraben Free
Fragrance Free
Gluten Free
Mineral Oil Free
Alcohol Free
Protein Free
Vegan Friendly
Color Safe
Safe for Relaxed Hair
Curl Type Finder
High Porosity Approved
Low Porosity Friendly
Fine Hair Favourite
Clinically Proven Results
Patented Technology
Proprietary Blend
Signature Scent
Active Complex
Smart Release Actives
Micro Technology
Bio Inspired Science
Green Chemistry
Upcycled Goodness
Carbon Neutral
Ocean Bound Plastic
Refill Pouch
`);

const food = lines(`
Tomato Soup
Chicken Noodle Soup
Apple Pie
Banana Bread
Carrot Cake
Lemon Tart
Orange Marmalade
Strawberry Jam
Blueberry Muffin
Rice Pudding
Oat Cookies
Porridge with Berries
Wheat Bread
Rye Toast
Corn on the Cob
Pea Soup
Lentil Stew
Chickpea Curry
Soy Latte
Almond Croissant
Hazelnut Spread
Peanut Butter Sandwich
Sesame Bagel
Coconut Rice
Avocado Toast
Olive Tapenade
Potato Salad
Garlic Bread
Ginger Snap
Mint Chocolate Chip
Vanilla Ice Cream
Caramel Popcorn
Honey Mustard Dressing
Milk Chocolate Bar
Buttermilk Pancakes
Yogurt Parfait
Egg Salad
Scrambled Eggs
Cheese Platter
Butter Chicken
Cream Cheese
Whipped Cream Topping
Fish and Chips
Salmon Fillet
Prawn Cocktail
Beef Broth
Bone Broth
Roast Turkey
Ham and Cheese
Sausage Roll
Pork Belly
Plain Flour
Self-raising Flour
Brown Sugar
Icing Sugar
Baking Powder
Instant Yeast
Vegetable Stock
Chopped Parsley
Ground Pepper
Sea Salt Flakes
Balsamic Dressing
Tomato Ketchup
Hot Sauce
Soy Sauce
Fish Sauce
Maple Pancakes
Green Smoothie
Protein Shake
Protein Bar
Energy Drink
Sparkling Water Lime
Cold Brew Coffee Drink
Earl Grey Latte
Chamomile Honey Latte
Two cups of rice
One cup of milk
Three eggs
A pinch of salt
A knob of butter
Half a lemon
Salt to taste
A handful of oats
Oil for frying
Water as needed
One tin of coconut milk drained
Zest of one orange
Bake for forty minutes
Simmer until thick
Serve with rice
Preheat the oven
Whisk the eggs
Fold in the flour
Season to taste
Garnish with mint
`);

const productNames = lines(`
Coconut Curl Cream
Shea Butter Leave-In
Argan Oil Shampoo
Rosemary Scalp Serum
Rice Water Shampoo
Rice Protein Conditioner
Keratin Conditioner
Silk Protein Leave-In Spray
Wheat Protein Mask
Hydrolyzed Keratin Hair Mask
Collagen Hair Mask
Aloe Vera Curl Gel
Flaxseed Styling Gel
Honey Hair Masque
Milk Protein Hair Cream
Oat Milk Shampoo Bar
Avocado Deep Conditioner
Tea Tree Shampoo
Peppermint Scalp Scrub
Castor Oil Edge Control
Mango Butter Body Cream
Jojoba Beard Balm
Baobab Co-Wash
Hibiscus Detangler
Marshmallow Root Detangler
Chamomile Baby Shampoo
Lavender Night Cream
Rose Water Face Mist Refill
Vitamin E Hand Cream
Biotin Thickening Shampoo
Caffeine Hair Tonic
Charcoal Clarifying Shampoo
Apple Cider Vinegar Rinse Kit
Clay Wash
Micellar Shampoo
Leave-In Conditioner
Curl Defining Foam
Styling Mousse
Hair Spray
Dry Shampoo
Scalp Serum
Hair Oil
Hair Butter
Body Butter
Body Lotion
Face Oil
Beard Oil
Massage Oil
Bath Salts
Lip Balm
Hand Soap
Nail Polish
Sun Cream
Hair Mask
Bond Builder
Protein Treatment
Deep Conditioner
Hair Gloss
Edge Gel
Wax Stick
Pomade
Detangling Brush
Wide Tooth Comb
Satin Bonnet
Microfiber Towel
Shower Filter
Diffuser Attachment
Spray Bottle
Sample Sachet
Refill Pack
`);

const damaged = lines(`
Aq
Wat
Glyc
Cety Alco
Ceteary
Sodium
Potassium
Magnesium
Disodium
Extract
Extracts
Seed Oil
Leaf Extract
Seed Extract
Fruit Extract
Root
Leaf
Oil
Butter
Wax
Powder
Juice
Protein
Proteins
Peptide Complex
Hydrolyzed
Hydrolysed
Hydroxypropyl
Cocodimonium
PEG
PPG
PEG-
CI
C.I.
Polysorbate
Polyquaternium
Quaternium
Copolymer
Crosspolymer
Acrylates/
Sulfate
Chloride
Phosphate
Stearate
Benzoate
Acid
Alcohols and more
Ester
Glyco
Glucoside
Betaine-like
Ferment
Filtrate
Lysate
xxxxx
abc def ghi
lorem ipsum dolor
qwertz
1234567890
12345 67890
N/A
n/a
null
undefined
TBC
TBD
see above
as above
same as above
etc
and more
and others
other ingredients
list follows
continued
page 2 of 3
EAN 4001234567890
SKU-99812
F.I.L. Z204511/1
Lot 22B117
250 ml
8.5 fl oz
100 g
pH 4.5
12M
50 %
99.9 % natural origin
@ourshop
hello@example.org
www.example.org
https://example.org/list
#washday
&nbsp;
<br>
{{ingredients}}
[object Object]
Ingredients
INGREDIENTS:
Full ingredients list
Key ingredients
Free from
May contain
Directions
Warnings
`);

const lookalikes = lines(`
Hydrolyzed Happiness
Hydrolyzed Moonlight
Hydrolyzed Unicorn
Cetyl Friend
Stearyl Place
Sodium Free Diet
Calcium Deficiency
Zinc Bar Counter
Magnesium Street
Protein Street
Keratin Street
Silk Road
Silk Route Trading
Milk Street
Honey Lane
Rose Garden
Rosemary Lane
Lavender Hill
Sage Advice
Ginger Hair
Olive Grove
Lemon Grove Avenue
Orange County
Cherry Tree House
Apple Store
Mint Condition
Basil Street
Violet Hour
Iris Scanner
Jasmine Rice Bowl
Lily Pond
Daisy Chain
Ivy League
Willow Tree House
Cedar Falls
Pine Forest Walk
Birch Street
Oak Barrel
Bamboo Floor
Cotton Shirt
Linen Dress
Wool Jumper
Leather Bag
Coral Reef
Pearl Earring
Amber Ring
Gold Rush
Silver Lining
Copper Kettle
Iron Man Race
Tin Soldier
Santa Maria Beach
Vista Grande Hotel
Casa Verde Kitchen
Villa Bella Pizza
Aroma Therapy Session
Formula One Racing
Alpha Beta Testing
Gamma Ray
Delta Airport
Omega Watch Strap
Vitamin Shop
Vitamin Sea
Acid Rain
Acid House
Alcohol Licence
Salt Lake
Sugar Rush
Sugar Daddy
Starch Your Collar
Gum Tree
Chewing Gum
Wax Museum
Wax Jacket
Oil Change
Oil Painting
Butter Dish
Butter Knife
Water Bottle
Water Park
Water Colour Set
Ice Water Bucket
Fruit Basket
Fruit Bowl
Root Canal
Root Vegetables
Leaf Blower
Leaf Tea Pot
Seed Packet
Seed Funding
Bark at the Moon
Stem Cell Research
Flower Power
Flower Shop
Berry Picking
Nut Case
Kernel Panic
Plant Based Living
Algae Bloom
Sea Breeze
Sea View
Ferment Festival
Peptide Research Centre
Amino Wagon
Polymer Clay
Silicone Baking Mat
Silicone Valley
Ether Net
Ester and Tom
Urea Cycle Lecture
Glucose Meter
Lactic Threshold
Citric Note
Propylene Carpet
Ethyl and Fred
Methyl Street
Butyl Rubber Seal
PEG and Board
PEG-ged out
Growth 20
Health-4
Depth-3
Month-12
Earth-2
Width 10
Birth-5
Strength-10
Level 20
Type 3
Shade 42
Red 9000
Blue Moon
Yellow Pages
Black Friday
Green Party
Brown Paper Bag
White Noise
CI 12
CI Hotel
Nylon Tights
Carbon Copy
Iodine Light
Camellia House Tea Room
Aloe House
Acacia Avenue
Magnolia Street
Hibiscus Hotel
Citrus Burst
Eucalyptus Forest Spa Day
Quinoa Bowl
Argan Bazaar
Cocoa Nib Topping
Coffee Break
Tea Time
Vanilla Sky
Papaya Salad
Pumpkin Spice
`);

export const neverFound: Record<string, string[]> = {
  prose,
  legal,
  marketing,
  food,
  productNames,
  damaged,
  lookalikes,
};
