# Units whose written form is not simply the number, a space and the symbol. `.name` is the unit alone.
# lbf is a pull in pounds: a shop reads lb.
um = { $number } µm
    .name = µm
in2 = { $number } in²
    .name = in²
ft2 = { $number } ft²
    .name = ft²
mm2 = { $number } mm²
    .name = mm²
cm2 = { $number } cm²
    .name = cm²
m2 = { $number } m²
    .name = m²
in3 = { $number } in³
    .name = in³
ft3 = { $number } ft³
    .name = ft³
yd3 = { $number } yd³
    .name = yd³
mm3 = { $number } mm³
    .name = mm³
cm3 = { $number } cm³
    .name = cm³
m3 = { $number } m³
    .name = m³
in4 = { $number } in⁴
    .name = in⁴
mm4 = { $number } mm⁴
    .name = mm⁴
cm4 = { $number } cm⁴
    .name = cm⁴
m4 = { $number } m⁴
    .name = m⁴
imp_gal = { $number } imp gal
    .name = imp gal
lbf = { $number } lb
    .name = lb
short_ton = { $number } short { $number ->
        [one] ton
       *[other] tons
    }
    .name = short ton
long_ton = { $number } long { $number ->
        [one] ton
       *[other] tons
    }
    .name = long ton
tonf = { $number } short { $number ->
        [one] ton
       *[other] tons
    }
    .name = short ton
N_mm2 = { $number } N/mm²
    .name = N/mm²
kgf_cm2 = { $number } kgf/cm²
    .name = kgf/cm²
lbf-in = { $number } lb·in
    .name = lb·in
lbf-ft = { $number } lb·ft
    .name = lb·ft
kip-ft = { $number } kip·ft
    .name = kip·ft
N-m = { $number } N·m
    .name = N·m
kN-m = { $number } kN·m
    .name = kN·m
N-mm = { $number } N·mm
    .name = N·mm
kgf-m = { $number } kgf·m
    .name = kgf·m
ft-lbf = { $number } ft·lb
    .name = ft·lb
in-lbf = { $number } in·lb
    .name = in·lb
deg = { $number }°
    .name = °
grad = { $number } gon
    .name = gon
degF = { $number } °F
    .name = °F
degC = { $number } °C
    .name = °C
delta_degF = { $number } °F
    .name = °F
delta_degC = { $number } °C
    .name = °C
degR = { $number } °R
    .name = °R
lb_ft3 = { $number } lb/ft³
    .name = lb/ft³
lb_in3 = { $number } lb/in³
    .name = lb/in³
kg_m3 = { $number } kg/m³
    .name = kg/m³
g_cm3 = { $number } g/cm³
    .name = g/cm³
t_m3 = { $number } t/m³
    .name = t/m³
lb_ft2 = { $number } lb/ft²
    .name = lb/ft²
kg_m2 = { $number } kg/m²
    .name = kg/m²
lbf_min = { $number } lb/min
    .name = lb/min
lbf_s = { $number } lb/s
    .name = lb/s
lbf_in = { $number } lb/in
    .name = lb/in
percent = { $number }%
    .name = %
