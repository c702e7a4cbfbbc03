package entry

// readRows is the table of TestRead: what is asked, the entry, what is read.
// ␣ stands for a space that does not break, ␢ for a narrow one,
// ¦ for one of no width.
const readRows = `
# numbers
R: 682.6 N → number 682.6 ± 0.05 N
R: 682.6 → number 682.6 ± 0.05
R: 682.6N → number 682.6 ± 0.05 N
R: -682.6 N → number -682.6 ± 0.05 N
R: +5 N → number 5 ± 0.5 N
R: .5 → number 0.5 ± 0.05
R: 680. → number 680 ± 0.5 5
R: 680. N → number 680 ± 0.5 N
R: 680 → number 680 ± 0.5 5
R: 680.0 → number 680 ± 0.05
R: 466000 → number 466000 ± 0.5 5 50 500
R: 0 → number 0 ± 0.5
R: 0.050 → number 0.05 ± 0.0005
R: 007 → number 7 ± 0.5
R: 1.2e3 → number 1200 ± 50
R: 1.2E+3 N → number 1200 ± 50 N
R: 1e-3 → number 0.001 ± 0.0005
R: 1.2×10³ → number 1200 ± 50
R: 1.2*10^3 N → number 1200 ± 50 N
R: 1.2x10^3 → number 1200 ± 50
R: 1.2·10^-3 → number 0.0012 ± 5e-05
R: -1.2 × 10³ kN → number -1.2e+06 ± 50000 kN
R: 460e3 → number 460000 ± 500 5000
R: 1e200 → error 1+5 too-large
R: 5e99999999999 → error 1+13 too-large
# separators
R: 682,6 → number 682.6 ± 0.05
R: 1,234 → error 1+5 comma
R: 1,234 N → error 1+5 comma
R: 0,123 → number 0.123 ± 0.0005
R: 12,345 → error 1+6 comma
R: 12,34 → number 12.34 ± 0.005
R: 1,2345 → number 1.2345 ± 5e-05
R: 1,234.5 → number 1234.5 ± 0.05
R: 1.234,5 → number 1234.5 ± 0.05
R: 1,234,567 → number 1.23457e+06 ± 0.5
R: 1.234.567 → number 1.23457e+06 ± 0.5
R: 1,23,456 → number 123456 ± 0.5
R: 1,234.567.8 → error 1+11 number
R: 1,2,3 → error 1+5 two-values
R: 12.345,67,8 → error 1+11 number
R: 1␣234 → number 1234 ± 0.5
R: 1␢234,5 → number 1234.5 ± 0.05
R: 1 234 → error 1+5 space
R: 1 234.5 → error 1+7 space
R: 1 234 567 → error 1+9 space
R: 1'234 → number 1234 ± 0.5
R: 1'23 → error 3+2 two-values
R: 1, 2 → error 2+1 two-values
# units
R: 0.6826 kN → number 682.6 ± 0.05 kN
R: 0.6826 KN → number 682.6 ± 0.05 kN
R: 0.00068 MN → number 680 ± 5 MN
R: 682600 mN → number 682.6 ± 0.0005 0.005 0.05 mN
R: 100 lb → number 444.822 ± 2.22411 22.2411 222.411 lb
R: 100 lbf → number 444.822 ± 2.22411 22.2411 222.411 lbf
R: 100 lbs → number 444.822 ± 2.22411 22.2411 222.411 lb
R: 1 kip → number 4448.22 ± 2224.11 kip
R: 2 kips → number 8896.44 ± 2224.11 kip
R: 3 newtons → number 3 ± 0.5 N
kN: 682.6 N → number 0.6826 ± 5e-05 N
kN: 0.6826 → number 0.6826 ± 5e-05
kN: P cos 60 + 100 N → expression 170.1 kN | F1·cos 60 + 0.1
kN: 200 N + 0.3 kN → expression 0.5 kN | 0.2 + 0.3
R: 0.3 + 0.2 kN → expression 500 kN | 0.3 + 0.2
R: (0.3 + 0.2) kN → expression 500 kN | 0.3 + 0.2
R: P + 0.2 kN → expression 540 N | F1 + 200
R: 340 N cos 60° + 0.1 kN → expression 270 N | 340·cos 60° + 100
R: P kN → error 3+2 unit-names
R: 2P N → expression 680 N | 2·F1
R: N → error 1+1 unit-alone
R: 5 N N → error 5+1 unit-place
R: 5 mN/m → error 6+1 unit-place
R: N 5 → error 1+1 unit-alone
moment: 12 N·m → number 12 ± 0.5 N·m
moment: 12 Nm → number 12 ± 0.5 N·m
moment: 12 N m → number 12 ± 0.5 N·m
moment: 0.5 kN-m → number 500 ± 50 kN·m
moment: 12 N*m → number 12 ± 0.5 N·m
ratio: 3/5 → expression 0.6 | 3/5
ratio: 0.6 → number 0.6 ± 0.05
ratio: ½ → number 0.5
ratio: 2½ → number 2.5
ratio: 3 N → error 1+3 ratio-asked
# wrong kind
R: 682 m → error 1+5 wrong-dimension
R: 87° → error 1+3 angle-misplaced
R: 1.5 rad → error 1+7 angle-misplaced
R: 180 - 93° → error 7+3 angle-misplaced
R: γ → error 1+1 angle-misplaced
R: sin^-1(0.5) → error 1+6 angle-misplaced
R: 340 + 25° → error 7+3 angle-misplaced
R: 340 N + 25° → error 9+3 mixed
R: sin(340 N) → error 5+5 trig-of
R: asin(340 N) → error 6+5 inverse-of
R: asin(340 N/680 N) → error 1+4 angle-misplaced
beta: 682 N → error 1+5 wrong-dimension
beta: P → error 1+1 wrong-dimension
beta: sin 30 → expression 0.5 | sin 30
beta: 0.49 → number 0.49 ± 0.005
R: 340 cos 25 m → error 9+4 trig-of
# angles
beta: 87 → number 87 ± 0.5
beta: 87° → number 87 ± 0.5 deg
beta: 87⁰ → number 87 ± 0.5 deg
beta: 87º → number 87 ± 0.5 deg
beta: 87 deg → number 87 ± 0.5 deg
beta: 87 degrees → number 87 ± 0.5 deg
beta: -87° → number -87 ± 0.5 deg
beta: 1.52 rad → number 87.0896 ± 0.286479 rad
beta: 1.52 radians → number 87.0896 ± 0.286479 rad
beta: -1.52 rad → number -87.0896 ± 0.286479 rad
beta: 100 grad → number 90 ± 0.45 gon
beta: 100 gon → number 90 ± 0.45 gon
# written another way, an angle says no more than the decimal it was: 87.3°, 87.25°
beta: 140 → number 140 ± 0.5
beta: 1.523672 rad → number 87.3 ± 0.05 rad
beta: 1.5227998 rad → number 87.25 ± 0.005 rad
beta: 87°18′0″ → number 87.3 ± 0.05 deg
beta: 87°18′9″ → number 87.3025 ± 0.000138889 deg
beta: 87°18′ → number 87.3 ± 0.00833333 deg
beta: 1.5237 rad → number 87.3 ± 0.05 rad
beta: 1.5244 rad → number 87.3417 ± 0.00286479 rad
beta: 52°30′ → number 52.5 ± 0.00833333 deg
beta: 52° 30' 15" → number 52.5042 ± 0.000138889 deg
beta: 52°30’15’’ → number 52.5042 ± 0.000138889 deg
beta: 52 deg 30 min → number 52.5 ± 0.00833333 deg
beta: 52 deg 30 min 15.5 sec → number 52.5043 ± 1.38889e-05 deg
beta: 52°30 → error 4+2 minutes
beta: 52°75′ → error 4+2 minutes-range
beta: 52.5°30′ → error 1+8 minutes-decimals
beta: 30′ → number 0.5 ± 0.00833333 ′
beta: -52°30′ → number -52.5 ± 0.00833333 deg
beta: cos 52°30′ → expression 0.608761 deg | cos 52.5°
beta: 180° − 52°30′ → expression 127.5 deg | 180° − 52.5°
beta: π/2 rad → expression 90 rad | (π/2)·(1 rad)
beta: 2π rad → expression 360 rad | 2·π·(1 rad)
beta: asin(0.5) rad → expression 30 rad | sin⁻¹(0.5)
beta: (π/6) rad + 5° → expression 35 deg | (π/6)·(1 rad) + 5°
beta: 180 - 2*46.5 deg → expression 87 deg | 180 − 2·46.5°
beta: (180 - 93)° → expression 87 deg | 180 − 93
beta: 0.5·1.2 rad → expression 34.3775 rad | 0.5·1.2·(1 rad)
# expressions
R: sqrt(340^2+610^2-2*340*610*cos(87)) → expression 682.635 | √(340² + 610² − 2·340·610·cos 87)
R: √(340²+610²−2×340×610×cos 87°) → expression 682.635 | √(340² + 610² − 2·340·610·cos 87°)
R: √(P² + Q² − 2PQ cos γ) → expression 682.635 | √(F1² + F2² − 2·F1·F2·cos gamma)
R: sqrt(P^2+Q^2-2P Q cosγ) → expression 682.635 | √(F1² + F2² − 2·F1·F2·cos gamma)
R: 2(340)(610)cos 87° → expression 21709 | 2·340·610·cos 87°
R: 2·340·610 cos 87° → expression 21709 | 2·340·610·cos 87°
R: 340(cos 25)(2) → expression 616.289 | 340·cos(25)·2
R: (340)610 → expression 207400 | 340·610
R: 2[3+{4}] → expression 14 | 2·(3 + 4)
R: 1/2P → expression 170 | (1/2)·F1
beta: 1/2theta → error 1+8 not-linear
R: 1/2·P → expression 170 | (1/2)·F1
R: P/2(3)(4) → expression 14.1667 | F1/(2·3·4)
R: -2^2 → expression -4 | −2²
R: (-2)^2 → expression 4 | (−2)²
R: 2^-1 → expression 0.5 | 2^(−1)
R: 2^3^2 → expression 512 | 2^(3²)
R: 2**3 → expression 8 | 2³
R: 2³ → expression 8 | 2³
R: 2⁻¹ → expression 0.5 | 2^(−1)
R: 10²³ → expression 1e+23 | 10^23
R: −2·3 → expression -6 | −2·3
R: 2·−3 → expression -6 | 2·(−3)
R: 2 - -3 → expression 5 | 2 − (−3)
R: --5 → expression 5 | −(−5)
R: 6÷3×2 → expression 4 | (6/3)·2
R: 3x4 → expression 12 | 3·4
R: 3 X (4) → expression 12 | 3·4
R: √3/2 → expression 0.866025 | √(3)/2
R: √P → expression 18.4391 | √F1
R: sqrt 340^2 → expression 340 | (√340)²
R: root(4) → expression 2 | √4
R: |3-5| → expression 2 | |3 − 5|
R: 2|3-5| → expression 4 | 2·|3 − 5|
R: |P|-|Q| → expression -270 | |F1| − |F2|
R: abs(3-5) → expression 2 | |3 − 5|
R: |3-|4-9|| → expression 2 | abs(3 − |4 − 9|)
R: π → expression 3.14159 | π
R: 2pi → expression 6.28319 | 2·π
R: P₁ → error 1+2 unknown-name-near
R: F_1 → expression 340 | F1
R: F₁cosγ → expression 17.7942 | F1·cos gamma
R: 2F1F2cosγ → expression 21709 | 2·F1·F2·cos gamma
R: Pcosγ+Qsinγ → expression 626.958 | F1·cos gamma + F2·sin gamma
R: f1 → expression 340 | F1
R: 340cos25 → expression 308.145 | 340·cos 25
R: 340 Ncos25 → expression 308.145 N | 340·cos 25
# functions
R: cos 2·30 → expression 29.9817 | cos(2)·30
R: cos 2γ → expression -0.994522 | cos(2·gamma)
R: cos 25° P → expression 308.145 | cos(25°)·F1
R: cos 87(340) → expression 17.7942 | cos(87)·340
R: cos(87)(340) → expression 17.7942 | cos(87)·340
R: cos(60)^2 → expression 0.25 | (cos 60)²
R: cos 30^2 → expression -1 | cos(30²)
R: cos² 60 → expression 0.25 | (cos 60)²
R: cos^2(60) → expression 0.25 | (cos 60)²
R: sin(-30) → expression -0.5 | sin(−30)
R: sin -30 → expression -0.5 | sin(−30)
R: sin 30 cos 60 → expression 0.25 | sin(30)·cos 60
R: sin 87/682.6 → expression 0.00146298 | sin(87)/682.6
R: Sin(30) → expression 0.5 | sin 30
R: SIN 30 → expression 0.5 | sin 30
R: sine(30) → expression 0.5 | sin 30
R: tg 45 → expression 1 | tan 45
R: tan 90 → error 1+3 undefined
R: cos(1.518) → error 4+7 radians
R: 340 cos 1.52 → error 9+4 radians
R: cos(1.518°) → expression 0.999649 | cos 1.518°
R: cos(1.518 rad) → expression 0.0527718 | cos(1.518 rad)
R: cos(0.5) → expression 0.999962 | cos 0.5
R: sin(π/3) → error 4+5 radians
R: sin(π/3 rad) → expression 0.866025 | sin((π/3)·(1 rad))
R: cos 6.5 → expression 0.993572 | cos 6.5
R: cos(-1.518) → error 4+8 radians
beta: sin^-1(0.5) → expression 30 | sin⁻¹(0.5)
beta: sin⁻¹(0.5) → expression 30 | sin⁻¹(0.5)
beta: sin⁻¹ 0.5 → expression 30 | sin⁻¹(0.5)
beta: sin^(-1)(0.5) → expression 30 | sin⁻¹(0.5)
beta: sin^{-1}(0.5) → expression 30 | sin⁻¹(0.5)
beta: sin-1(0.5) → expression 30 | sin⁻¹(0.5)
beta: sin -1(0.5) → expression 30 | sin⁻¹(0.5)
beta: arcsin(0.5) → expression 30 | sin⁻¹(0.5)
beta: asin 0.5 → expression 30 | sin⁻¹(0.5)
beta: invsin(0.5) → expression 30 | sin⁻¹(0.5)
beta: inv sin(0.5) → expression 30 | sin⁻¹(0.5)
beta: arc cos 0.5 → expression 60 | cos⁻¹(0.5)
beta: Inverse Sine (0.5) → expression 30 | sin⁻¹(0.5)
beta: atan(1) → expression 45 | tan⁻¹(1)
beta: tan^-1(3/4) → expression 36.8699 | tan⁻¹(3/4)
beta: sin^-2(0.5) → error 4+3 function-power
beta: sin^x 3 → error 5+1 function-power
beta: asin^-1(0.5) → error 1+7 function-power
beta: √^-1(3) → error 1+4 function-power
beta: inv 5 → error 1+3 inverse-alone
beta: sin⁻¹(1.5) → error 1+5 inverse-range
beta: acos(-2) → error 1+4 inverse-range
beta: asin(610/340) → error 1+4 inverse-beyond
beta: asin(sqrt(340²+610²)) → error 1+4 inverse-beyond
R: sqrt(3-5) → error 1+4 root-negative
R: 1/0 → error 1+3 divide-zero
R: 1/(2-2) → error 1+7 divide-zero
R: (-8)^0.5 → error 1+8 undefined
R: sin → error 1+3 function-alone
R: sin() → error 5+1 bracket-empty
R: sin * 3 → error 1+3 function-alone
# names
R: R → error 1+1 own
R: R/2 → error 1+1 own
R: Q cos β → error 7+1 not-found-yet
R: X → error 1+1 unknown-name
R: gama → error 1+4 unknown-name-near
R: sinn(3) → error 1+4 unknown-name-near
R: Rz → error 1+2 unknown-name-near
R: F12 → error 1+3 unknown-name-near
R: 5 apples → error 3+6 unknown-behind
beta: β → error 1+1 own
beta: θ → affine 0 + 1·theta | theta
beta: 118° − θ → affine 118 + -1·theta deg | 118° − theta
beta: theta-25 → affine -25 + 1·theta | theta − 25
beta: 180-(theta+5) → affine 175 + -1·theta | 180 − (theta + 5)
beta: 180 − 2(θ − 5)/4 → affine 182.5 + -0.5·theta | 180 − 2·(theta − 5)/4
beta: -θ → affine 0 + -1·theta | −theta
beta: 2θ - θ → affine 0 + 1·theta | 2·theta − theta
beta: γ − θ → affine 87 + -1·theta | gamma − theta
beta: θ θ → error 1+3 not-linear
beta: θ² → error 1+2 not-linear
beta: sin θ → error 1+5 not-linear
beta: 5/θ → error 1+3 not-linear
beta: θ + 0.5 rad → affine 28.6479 + 1·theta deg | theta + 0.5 rad
R: θ → error 1+1 angle-misplaced
# an equation asked
balance: T1 cos 40 - T2 cos 30 = 0 → equation T1·cos 40 − T2·cos 30 = 0
balance: T1 sin 40 + T2 sin 30 = 600 kg → equation T1·sin 40 + T2·sin 30 = 600 unequal 25+6
balance: T1 cos 40 - T2 cos 30 → equation T1·cos 40 − T2·cos 30 = 0
balance: ΣFx = T1 cos 40 - P → equation T1·cos 40 − F1 = 0
balance: ∑F_x = T1 cos 40° - 340 N = 0 → equation T1·cos 40° − 340 = 0
balance: T1 = T2 cos 30/cos 40 → equation T1 = T2·cos(30)/cos 40
balance: 0 = T1 - 0.34 kN → equation 0 = T1 − 340
balance: 340 N → error 1+5 equation-asked
balance: ΣFx = 0 → error 1+7 equation-asked
balance: T1 = T2 = 5 → error 9+1 equals
balance: T1 + R = 0 → error 6+1 not-found-yet
balance: T1 + cos = 0 → error 6+3 function-alone
balance: T1 + 40° = 0 → error 6+3 mixed
balance: T1 - ΣFx = 0 → error 6+3 own

# equals
R: R = 682.6 N → number 682.6 ± 0.05 N
R: R=682.6 → number 682.6 ± 0.05
R: R ≈ 682.6 → number 682.6 ± 0.05
R: ~682.6 N → number 682.6 ± 0.05 N
R: = 682.6 → number 682.6 ± 0.05
R: := 682.6 → number 682.6 ± 0.05
R: 682.6 N = R → number 682.6 ± 0.05 N
R: R = √(P² + Q² − 2PQ cos γ) = 682.6 N → number 682.6 ± 0.05 N
R: R = → error 4+0 empty
R: γ = 87 → error 1+1 other-quantity
R: 3 = 4 = 5 → number 5 ± 0.5
sum: T1 cos 40 - T2 cos 30 = 0 → equation T1·cos 40 − T2·cos 30 = 0
sum: T1 = T2 cos 30/cos 40 → equation T1 = T2·cos(30)/cos 40
sum: T1 cos 40 = 340 N + T2 cos 30° → equation T1·cos 40 = 340 + T2·cos 30°
sum: T1 cos 40 = 25° + 3 N → error 19+3 mixed
sum: T1 + T2 → error 6+2 two-unknowns
sum: T1 + X = 0 → error 6+1 unknown-name
# several values, pieces missing
R: 680 N 690 N → error 7+3 two-values
R: 682.6 or 680 → error 7+2 two-values
R: 682.6, 680 → error 6+1 two-values
R: 682.6; 680 → error 6+1 two-values
R: 682.6 ± 0.5 → error 7+1 two-values
R: 680 20 → error 5+2 two-values
R: γ 87 → error 3+2 two-values
R: 680 N at 62° → error 7+2 two-values
R: 3 + → error 3+1 unfinished
R: 3 + ) → error 5+1 bracket-close
R: * 3 → error 1+1 missing-before
R: 3 */ 4 → error 4+1 missing-before
R: (3 → error 1+1 bracket-open
R: 3) → error 2+1 bracket-close
R: () → error 2+1 bracket-empty
sum: T1 + (4 = 5 → error 6+1 bracket-open
R: |3 → error 1+1 bar-open
R: (|3) → error 2+1 bar-open
R: 3 ? 4 → error 3+1 character
R: 682.6 € → error 7+1 character
R: €5 → error 1+1 character
R: 2²⁻ → error 2+1 superscript
R: ² → error 1+1 missing-before
R: . → error 1+0 empty
R: … → error 1+0 empty
R: 682.6 N… → number 682.6 ± 0.05 N
# directions
beta: 30° below -x → direction 210 ± 0.5 5 deg | 30° below −x
beta: 30 deg below the negative x-axis → direction 210 ± 0.5 5 deg | 30° below −x
beta: 15° left of +y → direction 105 ± 0.5 deg | 15° left of +y
beta: 20 deg from +y clockwise → direction 70 ± 0.5 5 deg | 20° clockwise from +y
beta: 20° clockwise from +y → direction 70 ± 0.5 5 deg | 20° clockwise from +y
beta: 20° counter-clockwise from −y → direction 290 ± 0.5 5 deg | 20° counter-clockwise from −y
beta: 20° counterclockwise from −y → direction 290 ± 0.5 5 deg | 20° counter-clockwise from −y
beta: 3:4 up left → direction 143.13 deg | 3:4 up left
beta: N 30 E → direction 60 ± 0.5 5 deg | N 30° E
beta: N30°E → direction 60 ± 0.5 5 deg | N 30° E
beta: N 30°15′ E → direction 59.75 ± 0.00833333 deg | N 30.25° E
beta: S 12.5° W → direction 257.5 ± 0.05 deg | S 12.5° W
beta: 37° N of E → direction 37 ± 0.5 deg | 37° N of E
beta: 37 degrees north of west → direction 143 ± 0.5 deg | 37° N of W
beta: azimuth 120° → direction -30 ± 0.5 5 deg | azimuth 120°
beta: 120 above x → error 1+11 heading-range
beta: 30 below → error 4+5 heading-unfinished
beta: 30 N of S → error 1+9 heading-range
beta: 3:4 → error 1+3 heading-ways
beta: 0.5 rad above +x → direction 28.6479 ± 2.86479 deg | 28.64788976° above +x
beta: 3/4 up and to the right → direction 36.8699 deg | 3:4 up right
beta: up → direction 90 deg | +y
beta: north → direction 90 deg | N
beta: 25 kN above +x → error 4+2 heading-unit
R: 30° below -x → error 5+5 unknown-name
# look-alikes
R: ６８２．６ Ｎ → number 682.6 ± 0.05 N
R: ٦٨٢٫٦ N → number 682.6 ± 0.05 N
R: ۶۸۲٫۶ → number 682.6 ± 0.05
R: ६८२.६ N → number 682.6 ± 0.05 N
R: 2⋅3⋅4 → expression 24 | 2·3·4
R: 2∙3∗4 → expression 24 | 2·3·4
R: 7–3 → expression 4 | 7 − 3
R: 7—3 → expression 4 | 7 − 3
R: 𝟔𝟖𝟐.𝟔 N → number 682.6 ± 0.05 N
R: 𝑃 + 𝑄 → expression 950 | F1 + F2
R: Р + Q → expression 950 | F1 + F2
beta: 118º – ϑ → affine 118 + -1·theta deg | 118° − theta
R: 682.6¦ N → number 682.6 ± 0.05 N
R: 340∕2 → expression 170 | 340/2
R: 340⁄2 → expression 170 | 340/2
R: 682.6\ → number 682.6 ± 0.05
R: cоs 60 → expression 0.5 | cos 60
# units inside brackets
R: (0.3 + 0.2 kN)cos 60 → expression 250 N | (0.3 + 0.2)·1000·cos 60
R: cos(π/3 rad) → expression 0.5 | cos((π/3)·(1 rad))
R: cos(5 + 0.2 rad) → expression 0.959022 | cos(5 + 0.2 rad)
beta: 0.5 + 0.2 rad → expression 11.9592 deg | 0.5 + 0.2 rad
R: (340 N)cos 60 → expression 170 N | 340·cos 60
R: (340 N + 0.61 kN) → expression 950 N | 340 + 610
beta: (0.5 rad)2 → expression 57.2958 deg | (0.5 rad)·2
beta: 180 deg - asin(0.5) → expression 150 deg | 180° − sin⁻¹(0.5)
beta: -(52°30′) → number -52.5 ± 0.00833333 deg
R: (P kN) → error 4+2 unit-names
R: 340 cos(25) m → error 1+13 wrong-dimension
R: P cos(25) m → error 1+11 wrong-dimension
R: P m → error 3+1 unit-names
beta: γ N → error 3+1 unit-names
beta: γ° → expression 87 deg | gamma
R: 340 cos(25)° → expression 308.145 | 340·cos 25
moment: P·(2) m → expression 680 | F1·2
moment: 340 N × 2 m → expression 680 | 340·2
moment: 0.5 kN·(2 m) → expression 1000 | 500·2
# more that learners type
R: sin−1(0.5)/30 → expression 1 | sin⁻¹(0.5)/30
R: PN → error 1+2 unknown-name-near
R: R=2(3) → expression 6 | 2·3
R: 3 5/8 → error 3+1 two-values
R: 682.6 N or so → error 9+2 two-values
R: 2x → error 2+1 unknown-behind
R: 1_000 → error 2+1 character
R: é → error 1+1 unknown-name
R: 2 × (3 + 4) ÷ 7 → expression 2 | 2·(3 + 4)/7
R: 12 % 5 → error 4+1 character
R: sqrt(1,234) → error 6+5 comma
R: 60 kips → number 266893 ± 2224.11 22241.1 kip
R: 150# → number 667.233 ± 2.22411 22.2411 lb
R: 20 kgf → number 196.133 ± 4.90332 49.0332 kgf
R: 3 t → error 1+3 wrong-dimension
kN: 1,234.5 N → number 1.2345 ± 5e-05 N
`
