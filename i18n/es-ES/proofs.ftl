print-ws-tests-time = Tiempo máximo que puede tardar un { -gfci }: (20 ÷ mA) elevado a 1,43, en segundos: { $times }.
