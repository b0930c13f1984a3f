cli-after =
    Sin ninguna orden, tallywatt le hace una pregunta cada vez e imprime al final.

    Lo que dice no reemplaza a { -local-codes } ni a un { -electrician }.
cli-heading-commands = Órdenes
cli-value-command = [ORDEN]
usage-unknown-command = no hay ninguna orden { $argument }
usage-answers = --answers solo va con las preguntas: sin orden, o con ask
