package entry

// readRowsPhone goes on from readRows with what phones, keyboards, word
// processors and copies make of an entry, and habits of writing (common
// practice). ␛ stands for a combining arrow.
const readRowsPhone = `
# a sentence around the value
R: 682.6 N, → number 682.6 ± 0.05 N
R: 682.6 N; → number 682.6 ± 0.05 N
R: R = 682.6 N! → number 682.6 ± 0.05 N
R: "682.6 N" → number 682.6 ± 0.05 N
R: “682.6 N” → number 682.6 ± 0.05 N
R: '682.6' → number 682.6 ± 0.05
R: R: 682.6 N → number 682.6 ± 0.05 N
R: R is 682.6 N → number 682.6 ± 0.05 N
R: R -> 682.6 N → number 682.6 ± 0.05 N
R: => 682.6 N → number 682.6 ± 0.05 N
R: ⇒ 682.6 N → number 682.6 ± 0.05 N
R: about 682.6 N → number 682.6 ± 0.05 N
R: approx. 682.6 N → number 682.6 ± 0.05 N
R: ca. 682.6 N → number 682.6 ± 0.05 N
R: 682.6 N approx → number 682.6 ± 0.05 N
R: 682.6~ → number 682.6 ± 0.05
R: 340 + 610 = → expression 950 | 340 + 610
R: |R| = 682.6 N → number 682.6 ± 0.05 N
R: ‖R‖ = 682.6 N → number 682.6 ± 0.05 N
R: R␛ = 682.6 N → number 682.6 ± 0.05 N
R: |R| → error 2+1 own
R: 682.6 lb. → number 3036.36 ± 0.222411 lb
R: 682.6 (N) → number 682.6 ± 0.05 N
R: 682.6 [kN] → number 682600 ± 50 kN
R: (340 + 610) (N) → expression 950 N | 340 + 610
beta: 63.2 (°) → number 63.2 ± 0.05 deg
R: (N) → error 2+1 unit-place
R: 340 cos t → error 9+1 unknown-name
R: 340 cos(t) → error 9+1 unknown-name
R: 340 cos 25 = 308.1 N → number 308.1 ± 0.05 N
R: √(340²) + 5 = 340 + 5 = 345 → number 345 ± 0.5
beta: 88.2 - 25 = 63.2° → number 63.2 ± 0.05 deg
beta: θ - 25 = 63.2° → number 63.2 ± 0.05 deg
beta: β + 25 = θ → error 1+10 value-asked
beta: β + 25 = 88.2 → error 1+13 value-asked
R: R/sin 87 = 610/sin 63.17 → error 1+24 value-asked
R: 610/sin 63.17 = R/sin 87 → error 1+24 value-asked
R: R (N) = 682.6 → number 682.6 ± 0.05
R: the resultant R = 682.6 N → number 682.6 ± 0.05 N
beta: angle β (deg) = 63.2 → number 63.2 ± 0.05
beta: sinβ/610 = sin87/682.6 → error 1+22 value-asked
R: R/sin 87 = 610/sin 63.17 = 682.6 → number 682.6 ± 0.05
# numbers
R: ,6826 kN → number 682.6 ± 0.05 kN
R: 2·,5 → expression 1 | 2·0.5
R: 1 ,5 → error 3+1 two-values
R: 682..6 → error 1+6 number
R: 682.. N → error 1+5 number
R: 682·6 N → error 1+5 middle-dot
R: R = 682·6 → error 5+5 middle-dot
R: 682 · 6 → expression 4092 | 682·6
R: 682×6 → expression 4092 | 682·6
R: 2·340·610 → expression 414800 | 2·340·610
R: 6.826 x 102 N → error 1+11 power-lost
R: 6.826×102 → error 1+9 power-lost
R: 6.826×10-3 kN → error 1+10 power-lost
R: 340×102 → expression 34680 | 340·102
R: 3.5×100 → expression 350 | 3.5·100
R: 2.5 × (10 - 3) → expression 17.5 | 2.5·(10 − 3)
R: 682.6 kg m/s² → number 682.6 ± 0.05 N
R: 682.6 kg·m/s^2 → number 682.6 ± 0.05 N
R: 682.6 kgm/s2 → number 682.6 ± 0.05 N
# a letter for a digit
R: 68O N → error 3+1 letter-digit
R: 68ON → error 3+1 letter-digit
R: 68o N → error 3+1 letter-digit
R: 6o0 N → error 2+1 letter-digit
R: 7l4 N → error 2+1 letter-digit
R: 7I4 → error 2+1 letter-digit
R: l25 N → error 1+1 letter-digit
R: O.68 kN → error 1+1 letter-digit
R: O,68 kN → error 1+1 letter-digit
R: 12OO → error 3+1 letter-digit
R: 68Olb → error 3+1 letter-digit
R: 340 cos 3O → error 10+1 letter-zero
R: 340cos3O° → error 8+1 letter-digit
beta: 6O → error 2+1 letter-zero
beta: R = 6O.5 → error 6+1 letter-digit
R: 68l lb → error 3+1 letter-digit
R: 345lb → number 1534.64 ± 2.22411 lb
R: 1.5kip → number 6672.33 ± 222.411 kip
beta: 88.2o = 88.2 → number 88.2 ± 0.05
# angles
beta: ∠63.2° → number 63.2 ± 0.05 deg
beta: ∠ = 63.2° → number 63.2 ± 0.05 deg
beta: ∠β = 63.2° → number 63.2 ± 0.05 deg
R: 682.6∠88° → error 6+1 two-values
R: 682.6 N @ 88° → error 9+1 two-values
beta: 88.2o → number 88.2 ± 0.05 deg
beta: 88.2 o → number 88.2 ± 0.05 deg
beta: 88.2^o → number 88.2 ± 0.05 deg
R: 340cos25o → expression 308.145 | 340·cos 25°
beta: 88^0 → error 4+1 power-zero
beta: 0.49π → error 1+5 radians
beta: π/3 → error 1+3 radians
beta: β = 0.49 pi → error 5+7 radians
beta: 0.49π rad → expression 88.2 rad | 0.49·π·(1 rad)
beta: 180/π → expression 57.2958 | 180/π
# how far a function or a root reaches
beta: tan⁻¹682.3/21.77 → error 1+10 reach
beta: sin⁻¹ 610·sin 87/682.6 → error 1+9 reach
beta: tan⁻¹(682.3/21.77) → expression 88.1725 | tan⁻¹(682.3/21.77)
beta: tan-1 31.34 → expression 88.1724 | tan⁻¹(31.34)
beta: tan^-1 682.3 → expression 89.916 | tan⁻¹(682.3)
beta: 25 + sin-1 0.8924 → expression 88.1764 | 25 + sin⁻¹(0.8924)
R: 2^2 341 → error 5+3 two-values
R: √340²+610² → error 1+4 reach
R: sqrt 340^2 + 610^2 → error 1+8 reach
R: √P² + Q² → error 1+2 reach
R: √(340)² + 610² → error 1+6 reach
R: √(21.77)^2+(682.3)^2 → error 1+8 reach
R: √(340)² → expression 340 | (√340)²
R: √340² → expression 340 | (√340)²
beta: atan2(682.3, 21.77) → error 1+5 atan2
beta: angle = 63.2 → number 63.2 ± 0.05
R: 682.6 N (approx) → error 10+6 unknown-name
R: 5 J → error 3+1 unknown-behind
beta: tan⁻1(682.3/21.77) → expression 88.1725 | tan⁻¹(682.3/21.77)
beta: tan(-1)(4/3) → expression 53.1301 | tan⁻¹(4/3)
R: tan(-1) → expression -0.0174551 | tan(−1)
# a value, or by how much it may be off
R: 682.6 +/- 0.5 N → error 7+3 two-values
R: 682.6 +- 0.5 N → error 7+2 two-values
R: 340+-126 → expression 214 | 340 + (−126)
R: 682-683 N → error 1+7 range
R: 682 – 683 → error 1+9 range
beta: 88°-89° → error 1+6 range
beta: 118-25 → expression 93 | 118 − 25
beta: 25-63.2 → expression -38.2 | 25 − 63.2
R: 682 to 683 N → error 5+2 two-values
# a function ends before a force, and x is ×
R: cos 25 P → expression 308.145 | cos(25)·F1
R: cos25P + sin 25 Q → expression 565.942 | cos(25)·F1 + sin(25)·F2
balance: -cos40T1+cos30T2=0 → equation −cos(40)·T1 + cos(30)·T2 = 0
balance: T2 = cos40/cos30 T1 → equation T2 = (cos(40)/cos 30)·T1
balance: T1 x cos40 = T2 x cos30 → equation T1·cos 40 = T2·cos 30
R: 340xcos25 → expression 308.145 | 340·cos 25
R: 340 x cos 25 → expression 308.145 | 340·cos 25
# signs as they are said
R: minus 286.4 N → number -286.4 ± 0.05 N
R: negative 286.4 → number -286.4 ± 0.05
R: 340 times cosine 25 plus 5 → expression 313.145 | 340·cos 25 + 5
# sums, the way they count
balance: Σ Fx = -T1 cos40 + T2 cos30 → equation −T1·cos 40 + T2·cos 30 = 0
balance: SumFx: -T1cos40+T2cos30=0 → equation −T1·cos 40 + T2·cos 30 = 0
balance: sum F_x = T1 - T2 → equation T1 − T2 = 0
balance: \sum F_x = T1 - T2 = 0 → equation T1 − T2 = 0
balance: +↑ ΣFx = 0: T1 - T2 = 0 → equation T1 − T2 = 0
balance: (→+) ΣFx = T1 - T2 → equation T1 − T2 = 0
R: ↑ 5 N → error 1+1 character
# vectors, other words
R: 340cos25i + 340sin25j → error 9+1 vector
R: 21.8 i + 682 j → error 6+1 vector
R: 682.6 N upwards → error 9+7 way
R: 21.75 east → error 7+4 way
R: 682.6 Pa → error 7+2 unknown-behind
R: 0.6826 k → error 8+1 unknown-behind
R: 682 Ns → error 5+2 unknown-behind
R: The answer is 682.6 → number 682.6 ± 0.05
R: 2PX → error 2+2 unknown-behind
R: Tcos40 → error 1+6 unknown-name
R: T3x - 5 → error 1+3 unknown-name
balance: ΣFx = 0; T1 cos 40 - T2 cos 30 = 0 → equation T1·cos 40 − T2·cos 30 = 0
balance: +→ ΣFx = 0, T1 cos 40 - T2 cos 30 = 0 → equation T1·cos 40 − T2·cos 30 = 0
balance: ΣFx = 0: T1 cos 40 - T2 cos 30 = 0 → equation T1·cos 40 − T2·cos 30 = 0
balance: ΣFx = 0 = T1 cos 40 - T2 cos 30 = 0 → equation T1·cos 40 − T2·cos 30 = 0
R: 6.5 x -0.8 → expression -5.2 | 6.5·(−0.8)
R: (3²+4²)^1/2 → error 9+2 power-half
R: 4^1/2 → error 3+2 power-half
R: (3²+4²)^(1/2) → expression 5 | (3² + 4²)^(1/2)
R: 4/5 P → expression 272 | (4/5)·F1
R: 4/5P → expression 272 | (4/5)·F1
R: -3/5(410) → expression -246 | −(3/5)·410
R: 3/5(410 N) → expression 246 N | (3/5)·410
R: 8/17(400)+15/17(450)-520cos43 → expression 204.99 | (8/17)·400 + (15/17)·450 − 520·cos 43
R: 466000/2(340)(610) → error 1+18 fraction
balance: T1y + T2y - 80 = 0 → error 1+3 unknown-part
balance: 3/5(T1) = 4/5(80) → equation (3/5)·T1 = (4/5)·80
R: 4/5 P cos 60 → expression 136 | (4/5)·F1·cos 60
balance: 4/5 T1 - 3/5T2 = 0 → equation (4/5)·T1 − (3/5)·T2 = 0
beta: 4/5 P → error 1+5 fraction
R: R² = 3² + 4² → expression 5 | √(3² + 4²)
R: R^2 = 466000 N² → expression 682.642 | √466000
R: |R| = 5 → number 5 ± 0.5
R: R² = 25 = 5 → expression 2.23607 | √5
R: R² = 465991 kg → error 13+2 unit-place
R: R² = → error 1+1 own
R: hypot(342, 580) → error 1+5 unknown-function
R: 650.4 N (C) → error 10+1 pull
R: 650.4 N (T) → error 10+1 pull
R: 650.4 N compression → error 9+11 pull
R: 340/682.6 sin 87 → error 1+16 fraction
R: 340/682.6sin87 → error 1+14 fraction
balance: -2/√5 T1 + T2 cos 66 = 0 → equation −(2/√5)·T1 + T2·cos 66 = 0
balance: -2/sqrt(5) T1 + T2 = 0 → equation −(2/√5)·T1 + T2 = 0
balance: T2 = 2/√(2²+1²) T1 → equation T2 = (2/√(2² + 1²))·T1
balance: T2 = 2/(√5)T1 → equation T2 = (2/√5)·T1
balance: (2√5)/5 T1 = T2 → equation (2·√(5)/5)·T1 = T2
balance: 2/√5(T1) = T2 → equation (2/√5)·T1 = T2
balance: T2 = 1/(sin 40) T1 → equation T2 = (1/sin 40)·T1
balance: T2 = sin 70°/sin 60° T1 → equation T2 = (sin(70°)/sin 60°)·T1
balance: T2 = P/(2) T1 → equation T2 = F1/(2·T1)
balance: T1 - T2/√5 P = 0 → equation T1 − T2/(√(5)·F1) = 0
R: 2/√5 P → expression 304.105 | (2/√5)·F1
R: 2/√5(340) → expression 304.105 | (2/√5)·340
R: 1/√2 (340 N) → expression 240.416 N | (1/√2)·340
R: √3/2(340) → expression 294.449 | (√(3)/2)·340
R: 4/(5)(340) → expression 0.00235294 | 4/(5·340)
R: 340/√2 cos 30 → error 1+13 fraction
R: 340/√(2)(3)(4) → error 1+14 fraction
R: (4/5)P → expression 272 | (4/5)·F1
R: 4P/5 → expression 272 | 4·F1/5
R: 610·4/5 N → expression 488 N | 610·4/5
R: 5.2 N left → error 7+4 way
R: 5.2 N ↑ → error 7+1 way
R: 5.2 to the left → error 5+2 way
beta: 36.9 below neg x → direction 216.9 ± 0.05 deg | 36.9° below −x
# as a formula is pasted
R: \sqrt{340^2+610^2-2\cdot340\cdot610\cdot\cos(87^\circ)} → expression 682.635 | √(340² + 610² − 2·340·610·cos 87°)
R: \frac{340 \sin 87^{\circ}}{2} → expression 169.767 | 340·sin(87°)/2
R: 2 \times 340 \, \mathrm{N} → expression 680 N | 2·340
R: \left( 340 + 610 \right) → expression 950 | 340 + 610
beta: \sin^{-1}\left(0.5\right) → expression 30 | sin⁻¹(0.5)
beta: 118^\circ - \theta → affine 118 + -1·theta deg | 118° − theta
R: P + F_{2} → expression 950 | F1 + F2
R: frac(3) → error 1+4 unknown-function
# directions
beta: 20° above the +ve x-axis → direction 20 ± 0.5 5 deg | 20° above +x
beta: 20° below the -ve x axis → direction 200 ± 0.5 5 deg | 20° below −x
beta: 20° ccw with respect to +x → direction 20 ± 0.5 5 deg | 20° from +x
beta: 20° wrt +x → direction 20 ± 0.5 5 deg | 20° from +x
beta: 20 deg. from +x → direction 20 ± 0.5 5 deg | 20° from +x
beta: 30° in the third quadrant → direction 210 ± 0.5 5 deg | 30° below −x
beta: 30°, 2nd quadrant → direction 150 ± 0.5 5 deg | 30° above −x
beta: 30° Q4 → direction -30 ± 0.5 5 deg | 30° below +x
beta: Q1 30° → direction 30 ± 0.5 5 deg | 30° above +x
beta: 30.5° QIII → direction 210.5 ± 0.05 deg | 30.5° below −x
beta: 30° 3rd quadrant → direction 210 ± 0.5 5 deg | 30° below −x
beta: 36.87° 3rd quadrant → direction 216.87 ± 0.005 deg | 36.87° below −x
beta: 30° 2nd quad. → direction 150 ± 0.5 5 deg | 30° above −x
beta: 30 in quadrant 3 → direction 210 ± 0.5 5 deg | 30° below −x
beta: 30° quadrant IV → direction -30 ± 0.5 5 deg | 30° below +x
beta: 100° in quadrant 3 → error 1+18 heading-range
beta: 30° in the fifth quadrant → error 12+5 heading-word
beta: 30° quadrant 5 → error 5+8 heading
beta: 1.8° E → error 6+1 heading-unfinished
beta: 1.83° from vertical → error 1+19 heading-side
beta: 1.83° from the vertical, clockwise → direction 88.17 ± 0.005 deg | 1.83° clockwise from +y
beta: 1.83° from vertical to the right → direction 88.17 ± 0.005 deg | 1.83° right of +y
beta: 118 - x → error 7+1 unknown-name
# what autocorrect, other languages and copies make of it
R: 610 sen 30 → expression 305 | 610·sin 30
R: 680xtg 45 → expression 680 | 680·tan 45
R: tang 45 → expression 1 | tan 45
beta: arcsen(0.5) → expression 30 | sin⁻¹(0.5)
beta: sin-¹(0.5) → expression 30 | sin⁻¹(0.5)
beta: sin−¹ 0.5 → expression 30 | sin⁻¹(0.5)
R: $682.6$ → number 682.6 ± 0.05
R: 682.6 N? → number 682.6 ± 0.05 N
R: ans: 682.6 → number 682.6 ± 0.05
R: \frac45(600) → expression 480 | (4/5)·600
# a root lost in a copy
R: (308² + 143²)½ → error 1+14 half-behind
R: (308² + 143²)1/2 → error 1+16 half-behind
R: (308² + 143²)½ N → error 1+14 half-behind
beta: (360 − 186)½ → expression 87 | (360 − 186)·0.5
beta: arcsin 610 sin 87/682.6 → error 1+10 reach
beta: arcsin 0.5(2) → error 1+10 reach
# θ comes in and goes out again
beta: 180-(118-θ)-(θ-25) → expression 87 | 180 − (118 − theta) − (theta − 25)
# to how many digits, told behind
R: 683 N (3 sf) → number 683 ± 0.5 N
R: 682.6 N (1 d.p.) → number 682.6 ± 0.05 N
R: 682.6 N [to 4 s.f.] → number 682.6 ± 0.05 N
R: 682.6 N to 4 sig figs → number 682.6 ± 0.05 N
R: 682.6 (to 1 decimal place) → number 682.6 ± 0.05
R: 682.6 N, 4 significant figures → number 682.6 ± 0.05 N
R: 682.6 sf → error 7+2 unknown-behind
R: 68 sf → error 4+2 unknown-behind
beta: 88.2° (3sf) → number 88.2 ± 0.05 deg
# a value told twice
R: 683 N (0.683 kN) → number 683 ± 0.5 N
R: 0.683 kN (683 N) → number 683 ± 0.5 kN
R: 683 N [153.5 lb] → number 683 ± 0.5 N
R: 683 N (700 N) → error 8+5 two-values
R: 340 (2 N) → expression 680 N | 340·2
beta: 88.2° (1.539 rad) → number 88.2 ± 0.05 deg
`
