### レシピカードとラベル。まだ日本語を母語とする人の確認を受けていません。

card-carries = 電気を通す
card-blocks = 電気を通さない
card-open-carries = 電気を通すはずの生地ですが、レシピだけではわかりません。先に試してください。
card-open-blocks = 電気を通さないはずの生地ですが、レシピだけではわかりません。先に試してください。
card-mark-none = しるしはありません：電気を通すかどうか、まだだれにもわかりません。
card-mark-carries = この生地のしるし：糸が、丸くて白いかたまりを通りぬけます。
card-mark-blocks = この生地のしるし：糸が、四角くて黒いかたまりの前で引き返します。
card-looks-carries = 色をつけなければ、白っぽく、つやがありません。乾くと塩の白い粉がふくことがあります。
card-looks-blocks = 色をつけなければ、白っぽく、少しつやがあります。
card-looks-coloured = 色づけ：{ $ingredients }。
card-looks-alike = 電気を通す生地と通さない生地は、見た目がまったく同じことがあります。目ではなく、しるしを信じてください。
card-looks-alike-open = 電気を通す生地と通さない生地は、見た目がまったく同じことがあります。目を信じないで、試してください。
card-invented = 架空：レシピも人物も作りごとです。
card-heading-ingredients = 材料
card-heading-steps = 作り方
card-heading-does = この生地のはたらき
card-heading-trial = 一分間のためし
card-heading-careful = 気をつけること
card-heading-allergens = アレルゲン
card-for-people = { $people }人分：{ $batches }回つくります。1回で生地が約{ $grams } gできます。ここにあるのは1回分の分量です。
card-column-ingredient = 材料
card-column-grams = 重さ
card-column-measures = 計量（{ $kitchen }）
card-by-feel = 手ざわりで { $low }〜{ $high } g
card-and-by-feel = ＋手ざわりで { $low }〜{ $high } g
card-grams = { $amount } g
card-rounded = カップとさじの量は、この生地に合わせて丸めてあります。抵抗率の変化は { $shift } % です。
card-rounded-little = カップとさじの量は、この生地が変わらないように丸めてあります。
card-scale = カップやさじより、はかりのほうが確かです。

card-kitchen-us = 米国カップ
card-kitchen-us-label = 240 mL カップ
card-kitchen-metric = 250 mL カップ
card-kitchen-australian = 豪州カップ
card-kitchen-imperial = 英国カップ
card-kitchen-japanese = 200 mL カップ
card-kitchen-scale = はかり

measure-cup = カップ { $amount }
measure-tbsp = 大さじ { $amount }
measure-tsp = 小さじ { $amount }
measure-fl_oz = 液量オンス { $amount }
measure-dessertspoon = デザートスプーン { $amount }
measure-go = { $amount } 合
measure-dash = 少々 { $amount }
measure-grams = { $amount } g
measure-sum = { $left } ＋ { $right }

card-steps-own = 作り方は、レシピを書いた人の言葉のまま載せています。
card-steps-usual = レシピに作り方がないので、ふつうの作り方を載せています。
card-step-pot-1 = { $felt ->
    [yes] 手ざわりで加えるもの以外を冷たいなべに入れ、だまがなくなるまで混ぜます。
   *[no] すべてを冷たいなべに入れ、だまがなくなるまで混ぜます。
}
card-step-pot-2 = 大人が火にかけ、ずっと混ぜながら、重くなり、湯気が立ち、なべからはなれるまで加熱します。
card-step-kettle-1 = { $felt ->
    [yes] 手ざわりで加えるもの以外の粉をボウルで混ぜます。
   *[no] 粉をボウルで混ぜます。
}
card-step-kettle-2 = 大人が熱湯とほかの液体を注ぎ、一つのかたまりになるまで混ぜます。
card-step-microwave-1 = { $felt ->
    [yes] 手ざわりで加えるもの以外を大きなボウルで混ぜます。
   *[no] すべてを大きなボウルで混ぜます。
}
card-step-microwave-2 = 大人が電子レンジで少しずつ加熱し、そのつど混ぜて、重くなり湯気が立つまで続けます。
card-step-not-cooked-1 = 粉を混ぜます。液体を少しずつ加えます。
card-step-not-cooked-2 = なめらかになるまでこねます。
card-step-cool = 中まで熱くなくなるまで冷まします。
card-step-feel = 手ざわりを見ながら少しずつ練りこみます：{ $ingredients }。手につかなくなったら終わりです。使った量をはかってください。
card-step-keep = しまう前に、何の生地かを袋に書きます。

card-interval = { $mean }（{ $low }〜{ $high }）
card-resistivity = 抵抗率 { $value } Ω·m：100回作れば95回はこの範囲に入るはずです。
card-unmeasured = レシピから計算したもので、測った人はいません。
card-learnt = レシピと、{ $batches }から計算しました。
card-batches = 測定した { $count } 回分
card-roll-thick = 太さ 2 cm、長さ 10 cm の棒を通した赤いランプ：{ $state }。
card-roll-thin = 太さ 8 mm、長さ 30 cm の棒を通した同じランプ：{ $state }。
card-wall = 二つのかたまりの間の厚さ 3 mm の壁（接する面 4 cm²）：またいでつないだ赤いランプは{ $state }ままです。
card-wall-breaks = 二つのかたまりの間の厚さ 3 mm の壁（接する面 4 cm²）：またいでつないだ赤いランプは{ $state }だけです。もっと厚くしてください。
card-wall-lasts = このような壁には塩がしみこみます。{ $low }〜{ $high } 時間で作り直してください。
card-wall-lasts-long = このような壁には塩がしみこみます。{ $low } 時間以上もちます。
card-pack = 単三電池四本で計算しています。
card-state-dark = 消えた
card-state-barely-lit = かすかに光る
card-state-dim = 弱く光る
card-state-bright = 明るい
card-state-span = { $worst }から{ $best }まで
card-feel = 手ざわり：レシピからわかる範囲では、{ $feel }。
card-feel-open = 手ざわり：{ $low }から{ $high }まで。レシピだけではわからない。
card-feel-crumbles = ぼろぼろ
card-feel-stiff = かため
card-feel-right = ちょうどよい
card-feel-soft = やわらかめ
card-feel-sticks = べたつく
card-keeps = ふたをした箱で、室内で { $low }〜{ $high } 日、冷蔵庫で { $cold_low }〜{ $cold_high } 日もちます（慣習で、測った人はいません）。

card-contains = 含むもの：{ $allergens }。
card-may-contain = 含むおそれのあるもの：{ $allergens }。
card-contains-none = 材料に、一覧にあるアレルゲンはありません。袋の表示を読んでください。
card-list = { $left }、{ $right }
card-not-food = 食べられません

card-careful-eaten = 塩が { $share } % 入っています。体重 { $child_mass } kg の子どもは { $child } g で命にかかわることがあり、{ $dog_mass } kg の犬は { $dog } g で具合が悪くなります。食べてしまったら、すぐに医師、中毒相談の窓口、獣医に電話してください。吐かせたり、塩水を飲ませたりしないでください。
card-careful-tartrate-dog = クリームオブターターと酒石酸は、犬の腎臓をこわすことがあります。犬が食べたら、すぐに獣医に電話してください。
card-careful-epsom-child = エプソムソルトは下剤です。子どもが食べたら、中毒相談の窓口に聞いてください。
card-careful-potassium-child = カリウムの塩は心臓を止めることがあります。子どもが食べたら、すぐに中毒相談の窓口に電話してください。
card-careful-glycerol-child = グリセリンは小さい子どもを重い病気にすることがあります。子どもが食べたら、中毒相談の窓口に聞いてください。
card-careful-boron-child = ホウ砂は毒です。だれかが食べたら、すぐに中毒相談の窓口に電話してください。
card-careful-alum = ミョウバンは口や胃を焼きます。袋はかぎのかかる所に置いてください。
card-careful-burnt-alum = 焼きミョウバンは生ミョウバンのほぼ２倍の強さです。必ず量ってください。
card-careful-borax = ホウ砂は子どもの生地に使えません。入れないでください。
card-careful-flour-raw = 生の粉には菌がいることがあり、この生地は中まで火が通っていません。だれも味見をせず、みんな手を洗います。
card-careful-flour-cooked = 生の粉には菌がいることがあります。全体から湯気が立つまで加熱します。あとから足した粉は生です。手を洗います。
card-careful-hot = こんろも生地も熱い：大人が加熱し、中まで冷めてから配ります。
card-careful-acid-eyes = 酸は目にしみます。大人が注ぎます。目に入ったら15分間水で洗い、医師に聞いてください。
card-careful-salt-skin = 塩はしみます。傷、荒れた肌、湿疹、目のまわりには使いません。
card-careful-dust = 粉は低い所からゆっくり入れます。粉じんはぜん息の人を苦しめ、火の近くでは燃えます。
card-careful-slippery = 油やグリセリンが床に落ちるとすべります。すぐにふきます。
card-careful-spirit = アルコールは燃えます。火のそばでは使わず、熱いなべに入れません。
card-careful-small-parts = 三歳未満には使えません。ランプ、電池、小さい玉はのどにつまります。
card-careful-pack-wires = 電池の二本の線をふれさせません。熱くなります。
card-careful-cells = 小さい子どもの近くにボタン電池を置きません。飲みこむと数時間で体に穴があきます。
card-careful-mains = 生地をコンセントにつないではいけません。
card-careful-colour-stains = 食用色素は手や布にしみがつきます。
card-careful-sugar-ants = 砂糖はアリやハチを呼び、かびます。冷やして置きます。
card-careful-pan = 塩と酸はアルミをいためます。鉄かホーローのなべを使います。
card-careful-metal = 緑、黒、さび色になった所は切り取ります。やめるときは線をぬきます。
card-careful-mould = におい、しみ、ぬめりが出たら捨てます。
card-careful-disposal-salt = 古い生地はごみ箱へ。流しや花だんに捨てず、動物のいる外に置きません。
card-careful-disposal = 古い生地はごみ箱へ。流しに捨てず、動物のいる外に置きません。
card-careful-migration = おもちゃの法律が量を限る金属が入っています。このカードは証明書ではありません。
card-careful-packet = 袋の注意を読んで守ってください：{ $ingredients }。
card-careful-rules = その土地の決まりと、資格のある人の言うことが先です。

card-qr = 同じレシピ（Lumped のファイル）。
card-qr-no-story = このレシピ（Lumped のファイル）。物語は入っていません。
card-qr-no-steps = このレシピ（Lumped のファイル）。物語と作り方は入っていません。
card-qr-none = レシピが長すぎて、電話で読める大きさのコードになりません。ファイルを保存してください。
card-qr-as-written = コードの中の分量は、もとのレシピのままです。
card-qr-alt = レシピの文の入った四角いコード
card-foot-computed = { $date } に Lumped { $version } が計算しました。
card-foot-sources = 出典：{ $sources }。ほかに慣習と記憶によるものがあります。
card-unread-ja = この文章は、まだ日本語を母語とする人の確認を受けていません。
card-foot-batch = 作った回：{ $batch }、{ $date }。
card-foot-batch-undated = 作った回：{ $batch }。

card-date = { $year }年{ $month }{ $day }日
card-month-1 = 1月
card-month-2 = 2月
card-month-3 = 3月
card-month-4 = 4月
card-month-5 = 5月
card-month-6 = 6月
card-month-7 = 7月
card-month-8 = 8月
card-month-9 = 9月
card-month-10 = 10月
card-month-11 = 11月
card-month-12 = 12月

card-allergen-celery = セロリ
card-allergen-cereals-containing-gluten = グルテンを含む穀物
card-allergen-gluten = グルテン
card-allergen-crustaceans = えび・かに類
card-allergen-crustacean-shellfish = えび・かに類
card-allergen-eggs = 卵
card-allergen-fish = 魚
card-allergen-lupin = ルピナス豆
card-allergen-milk = 乳
card-allergen-molluscs = 貝・いか・たこ類
card-allergen-mustard = からし
card-allergen-peanuts = 落花生
card-allergen-sesame = ごま
card-allergen-soybeans = 大豆
card-allergen-sulphur-dioxide-and-sulphites = 二酸化硫黄と亜硫酸塩
card-allergen-tree-nuts = 木の実
card-allergen-wheat = 小麦

tags-made = 作った日
tags-tare = 空の重さ
tags-gross = 生地こみ
tags-hash = レシピ { $hash }
tags-fold = ここで折る
tags-qr-alt = 中身を示す四角いコード
tags-foot = 破線で切ります。大きいラベルは真ん中で折って立てます。

card-trial-mould-straw = 生地をつめたストロー
card-trial-mould-barrel = 生地をつめた注射筒
card-trial-mould-ice-cube = 生地をつめた製氷皿の一ます
card-trial-lamp = 赤いランプ
card-trial-pack = 単三電池四本
card-trial-resistor = { $ohms } Ω の抵抗
trial-card-do-resistor = 一分間：{ $mould }、深さ { $depth } mm にさしたねじ二本、{ $pack }、{ $resistor }、{ $lamp }を一列につなぎます。
trial-card-do-plain = 一分間：{ $mould }、深さ { $depth } mm にさしたねじ二本、{ $pack }、{ $lamp }を一列につなぎます。
trial-card-conducting = 明るい：合格。弱い：ねじのまわりの生地を押さえます。それでも弱いか、消えたまま：不合格。
trial-card-insulating = 消えたまま：合格。弱い：厚い壁にだけ使えます。明るい：不合格。
trial-card-share = よい生地は100回のうち { $good } 回、失敗した生地（{ $bad }）は100回のうち { $passed } 回合格します。
trial-card-weak = このためしは弱く、よい生地か失敗した生地を、十回に一回より多く見誤ります。大事なときは抵抗率を測ってください。
trial-bad-no-salt = 塩を入れ忘れた
trial-bad-spoon-of-salt = 小さじ一杯の塩が混ざった
trial-bad-no-carrier = あまり電気を通さない生地（5 Ω·m）
