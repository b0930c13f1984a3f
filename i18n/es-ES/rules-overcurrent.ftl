over-cord = { $cord ->
    [gauge] Use un cable marcado 16, 14 o 12 AWG ({ $measure ->
          [metric] 1,5 mm² o más
         *[customary] calibre
        }): un número AWG menor es un conductor más grueso.
    [none] Ningún cable con su clavija está hecho para { $made }: ponga antes una caja certificada por un laboratorio, con { -breaker(form: "many") } más pequeños.
   *[amps] Use un cable hecho para { $made }.
  }
